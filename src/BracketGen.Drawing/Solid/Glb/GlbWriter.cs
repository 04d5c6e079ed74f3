using System.Buffers.Binary;
using BracketGen.Drawing.Solid.Mesh;

namespace BracketGen.Drawing.Solid.Glb;

/// <summary>Writes a mesh as a binary glTF 2.0 file for viewers (ISO/IEC 12113).</summary>
/// <remarks>
/// Metres, as glTF asks. The axes are those of the throttle frame: its y is up and its z comes towards the eye, which is how glTF sees
/// the front of a thing. Round surfaces have their exact normals, edges are sharp. The same input gives the same bytes.
/// </remarks>
public static class GlbWriter
{
    private const uint Magic = 0x46546C67, JsonChunk = 0x4E4F534A, BinaryChunk = 0x004E4942;

    /// <summary>The bytes of the file.</summary>
    public static byte[] Write(FoldedMesh mesh, SolidInfo info)
    {
        var points = GlbPoints.Of(mesh);
        var count = points.Positions.Count;
        var data = new byte[24 * count + 4 * points.Indices.Count];
        for (var i = 0; i < count; i++)
        {
            Put(data.AsSpan(12 * i), points.Positions[i]);
            Put(data.AsSpan(12 * (count + i)), points.Normals[i]);
        }

        for (var i = 0; i < points.Indices.Count; i++)
        {
            BinaryPrimitives.WriteUInt32LittleEndian(data.AsSpan(24 * count + 4 * i), (uint)points.Indices[i]);
        }

        return Pack(GlbDescription.Write(points, info), data);
    }

    private static byte[] Pack(byte[] json, byte[] data)
    {
        // Each chunk ends on a multiple of four: text filled up with blanks, numbers are there already.
        var padded = (json.Length + 3) / 4 * 4;
        var bytes = new byte[12 + 8 + padded + 8 + data.Length];
        PutHead(bytes, Magic, 2, (uint)bytes.Length);
        PutHead(bytes.AsSpan(12), (uint)padded, JsonChunk);
        json.CopyTo(bytes, 20);
        bytes.AsSpan(20 + json.Length, padded - json.Length).Fill((byte)' ');
        PutHead(bytes.AsSpan(20 + padded), (uint)data.Length, BinaryChunk);
        data.CopyTo(bytes, 28 + padded);
        return bytes;
    }

    private static void PutHead(Span<byte> at, params ReadOnlySpan<uint> words)
    {
        for (var i = 0; i < words.Length; i++)
        {
            BinaryPrimitives.WriteUInt32LittleEndian(at[(4 * i)..], words[i]);
        }
    }

    private static void Put(Span<byte> at, Single3 v)
    {
        BinaryPrimitives.WriteSingleLittleEndian(at, v.X);
        BinaryPrimitives.WriteSingleLittleEndian(at[4..], v.Y);
        BinaryPrimitives.WriteSingleLittleEndian(at[8..], v.Z);
    }
}
