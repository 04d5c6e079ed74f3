using System.Globalization;
using System.Text;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Dxf.Format;

/// <summary>Writes groups: a code on one line, its value on the next.</summary>
/// <remarks>The bottom of the DXF writer, and the only place in it that formats a number or encodes a text.</remarks>
internal sealed class GroupCodeWriter
{
    private readonly StringBuilder _text = new();

    // Old controls have short buffers for a number, and take -0.0 for something: nothing is finer than 1e-9 of the file's unit. A bulge is a tangent, from which a radius is
    // worked out: it has more.
    private const int Bulge = 42, Decimals = 9, BulgeDecimals = 12;

    public void Text(int code, string value)
    {
        Code(code);
        foreach (var c in value)
        {
            // Control characters and the caret by the format's own escapes; all beyond ASCII by its code.
            _ = c switch
            {
                '^' => _text.Append("^ "),
                < ' ' => _text.Append('^').Append((char)(c + '@')),
                > '~' => _text.Append("\\U+").Append(((int)c).ToString("X4", CultureInfo.InvariantCulture)),
                _ => _text.Append(c),
            };
        }

        _text.Append('\n');
    }

    public void Integer(int code, int value)
    {
        Code(code);
        _text.Append(value.ToString(CultureInfo.InvariantCulture)).Append('\n');
    }

    public void Real(int code, double value)
    {
        Code(code);
        _text.Append(Format(Rounded(value, code == Bulge ? BulgeDecimals : Decimals))).Append('\n');
    }

    public void Handle(int code, Handle value)
    {
        Code(code);
        _text.Append(value.Value.ToString("X", CultureInfo.InvariantCulture)).Append('\n');
    }

    /// <summary>A point in the drawing's plane as two groups.</summary>
    public void Point(int code, Vector2 value)
    {
        Real(code, value.X);
        Real(code + 10, value.Y);
    }

    /// <summary>A point as three groups, the third zero unless given.</summary>
    public void Point3(int code, Vector2 value, double z = 0)
    {
        Point(code, value);
        Real(code + 20, z);
    }

    /// <summary>The groups that <paramref name="other"/> holds.</summary>
    public void Append(GroupCodeWriter other) => _text.Append(other._text);

    public byte[] ToBytes() => Encoding.ASCII.GetBytes(_text.ToString());

    /// <summary>Rounded to decimals, and zero without a sign.</summary>
    private static double Rounded(double value, int decimals) => Math.Round(value, decimals) + 0.0;

    /// <summary>The shortest decimal that reads back as the same double, never with an exponent, always with a point.</summary>
    /// <remarks>Some machines' readers know no exponents, and some take a number without a point for an integer.</remarks>
    internal static string Format(double value)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentException($"A DXF file cannot hold {value}.", nameof(value));
        }

        var shortest = Math.Abs(value).ToString("R", CultureInfo.InvariantCulture);
        var at = shortest.IndexOf('E');
        var mantissa = at < 0 ? shortest : shortest[..at];
        var exponent = at < 0 ? 0 : int.Parse(shortest[(at + 1)..], CultureInfo.InvariantCulture);
        var point = mantissa.IndexOf('.');
        var whole = (point < 0 ? mantissa.Length : point) + exponent;
        var digits = mantissa.Replace(".", "");
        if (whole <= 0)
        {
            digits = new string('0', 1 - whole) + digits;
            whole = 1;
        }

        digits = digits.PadRight(whole + 1, '0');
        return (value < 0 ? "-" : "") + digits[..whole] + "." + digits[whole..];
    }

    private void Code(int code) =>
        _text.Append(code.ToString(CultureInfo.InvariantCulture).PadLeft(3)).Append('\n');
}
