using System.Buffers.Binary;
using System.Text;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Solid.Mesh;

/// <summary>Writes a mesh as a binary STL file (mm) for printing a model that shows whether the bracket fits.</summary>
/// <remarks>
/// Throttle frame. The format knows neither unit nor name, so the head says what the numbers are and that the print is no bracket. The
/// same input gives the same bytes.
/// </remarks>
public static class StlWriter
{
    private const int HeadLength = 80, TriangleLength = 50;

    /// <summary>The bytes of the file.</summary>
    public static byte[] Write(FoldedMesh mesh, SolidInfo info)
    {
        var bytes = new byte[HeadLength + 4 + TriangleLength * mesh.Triangles.Length];

        // A head that began with "solid" would be taken for a text file.
        var head = "mm; model to check the fit, NOT A THROTTLE BRACKET" + (info.Warnings.IsEmpty ? "" : "; SAFETY CHECK FAILED");
        Encoding.ASCII.GetBytes(head.PadRight(HeadLength), bytes);
        BinaryPrimitives.WriteUInt32LittleEndian(bytes.AsSpan(HeadLength), (uint)mesh.Triangles.Length);
        for (var i = 0; i < mesh.Triangles.Length; i++)
        {
            var (a, b, c) = mesh.Triangles[i];
            Vector3 p = mesh.Vertices[a], q = mesh.Vertices[b], r = mesh.Vertices[c];
            var normal = (q - p).Cross(r - p);
            var triangle = bytes.AsSpan(HeadLength + 4 + TriangleLength * i, TriangleLength);

            // A sliver without area has no normal; the format lets zero stand for "see the corners".
            Put(triangle, normal.Length > 0 ? normal.Unit : Vector3.Zero);
            Put(triangle[12..], p);
            Put(triangle[24..], q);
            Put(triangle[36..], r);
        }

        return bytes;
    }

    private static void Put(Span<byte> at, Vector3 v)
    {
        BinaryPrimitives.WriteSingleLittleEndian(at, (float)v.X);
        BinaryPrimitives.WriteSingleLittleEndian(at[4..], (float)v.Y);
        BinaryPrimitives.WriteSingleLittleEndian(at[8..], (float)v.Z);
    }
}
