using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;

namespace BracketGen.Profiles.Dxf;

/// <summary>Reads what a DXF file draws in its plane: LINE, ARC, CIRCLE, LWPOLYLINE and POLYLINE, any release, ASCII.</summary>
/// <remarks>
/// Group codes after the DXF Reference: 0 entity, 8 layer, 10 and 20 point, 11 and 21 second point, 40 radius, 42 bulge, 50 and 51 angles (degrees), 67 paper space, 70 flags, 230 z of the extrusion, which is -1 for what is drawn
/// from behind. Blocks, text, dimensions, splines and the like are counted and left out. The first mistake ends the reading.
/// </remarks>
internal sealed class DxfReader
{
    // Larger coordinates are no bracket's, and their digits do not tell a tenth of a millimetre any more.
    private const double Farthest = 1e6;

    private readonly string _file;
    private readonly Reading _reading;
    private readonly List<(int Code, string Value, int Line)> _pairs = [];
    private readonly List<DxfPath> _paths = [];
    private readonly List<DxfRound> _circles = [];
    private readonly SortedDictionary<string, int> _skipped = new(StringComparer.Ordinal);
    private double? _unit;
    private int _points;
    private bool _isWrong;

    private DxfReader(string file, Reading reading) => (_file, _reading) = (file, reading);

    /// <summary>What the bytes draw; null where a mistake was reported.</summary>
    /// <param name="file">Name of the file in errors.</param>
    /// <param name="bytes">The file.</param>
    /// <param name="reading">Takes the mistakes.</param>
    public static DxfDrawn? Read(string file, ReadOnlySpan<byte> bytes, Reading reading)
    {
        var reader = new DxfReader(file, reading);
        return reader.Split(bytes) && reader.Walk()
            ? new(reader._unit, [.. reader._paths], [.. reader._circles], [.. reader._skipped.Select(s => (s.Key, s.Value))])
            : null;
    }

    private bool Wrong(DxfMistake mistake, int line, string read, string layer = "")
    {
        if (!_isWrong)
        {
            _reading.Report(new(_file, line, line > 0 ? 1 : 0), "", read.Length > 40 ? read[..40] + "…" : read, new DxfWrong(mistake, layer));
        }

        _isWrong = true;
        return false;
    }

    // Two lines to a pair: the code and its value.
    private bool Split(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Contains((byte)0))
        {
            return Wrong(DxfMistake.Binary, 0, "");
        }

        var lines = Encoding.UTF8.GetString(bytes).Split('\n');
        var count = lines.Length > 0 && string.IsNullOrWhiteSpace(lines[^1]) ? lines.Length - 1 : lines.Length;
        for (var i = 0; i < count; i += 2)
        {
            var code = lines[i].Trim().TrimStart('\uFEFF');
            if (!int.TryParse(code, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) || i + 1 >= count)
            {
                return Wrong(DxfMistake.NotPairs, i + 1, new string([.. code.Where(c => !char.IsControl(c))]));
            }

            _pairs.Add((number, lines[i + 1].Trim(), i + 1));
        }

        return true;
    }

    private bool Walk()
    {
        var section = "";
        var hasEntities = false;
        for (var i = 0; i < _pairs.Count; i++)
        {
            var (code, value, _) = _pairs[i];
            if (code == 0 && value == "SECTION")
            {
                section = i + 1 < _pairs.Count && _pairs[i + 1].Code == 2 ? _pairs[i + 1].Value : "";
                hasEntities |= section == "ENTITIES";
                i++;
            }
            else if (code == 0 && value == "ENDSEC")
            {
                section = "";
            }
            else if (section == "HEADER" && code == 9 && value == "$INSUNITS" && i + 1 < _pairs.Count)
            {
                _unit = _pairs[i + 1].Value switch { "1" => 25.4, "2" => 304.8, "4" => 1, "5" => 10, "6" => 1000, _ => null };
            }
            else if (section == "ENTITIES" && code == 0)
            {
                i = Entity(i) - 1;
            }

            if (_isWrong)
            {
                return false;
            }
        }

        return hasEntities || Wrong(DxfMistake.NoEntities, 0, "");
    }

    // From its name on; gives where the next one begins.
    private int Entity(int start)
    {
        var (_, kind, line) = _pairs[start];
        var end = Next(start);
        var data = _pairs[(start + 1)..end];
        if (kind == "POLYLINE")
        {
            var vertices = new List<(int Code, string Value, int Line)>();
            var isClosed = ((int)Number(data, 70, 0) & 1) == 1;
            var isFlat = ((int)Number(data, 70, 0) & ~129) == 0;
            while (end < _pairs.Count && _pairs[end].Value == "VERTEX")
            {
                var next = Next(end);
                vertices.AddRange(_pairs[(end + 1)..next].Where(p => p.Code is 10 or 20 or 42));
                end = next;
            }

            if (end < _pairs.Count && _pairs[end].Value == "SEQEND")
            {
                end = Next(end);
            }

            if (!isFlat)
            {
                Skip(kind);
            }
            else if (IsSeen(data))
            {
                Add(kind, data, line, Polyline(vertices, isClosed));
            }

            return end;
        }

        if (!IsSeen(data))
        {
            return end;
        }

        switch (kind)
        {
            case "LINE":
                Add(kind, data, line, DrawnPath.Line(new(Needed(data, 10, line), Needed(data, 20, line)), new(Needed(data, 11, line), Needed(data, 21, line))));
                break;
            case "ARC":
                var from = Angle.FromDegrees(Needed(data, 50, line));
                var sweep = (Needed(data, 51, line) - from.Degrees) % 360;
                sweep += sweep <= 0 ? 360 : 0;
                if (Radius(data, line) is { } radius && !_isWrong)
                {
                    Add(kind, data, line, DrawnPath.Arc(new(Needed(data, 10, line), Needed(data, 20, line)), radius, from, Angle.FromDegrees(sweep)));
                }

                break;
            case "CIRCLE":
                if (Radius(data, line) is { } size && !_isWrong)
                {
                    var centre = new Vector2(Needed(data, 10, line), Needed(data, 20, line));
                    _circles.Add(new(Layer(data), line, IsFromBehind(data) ? centre.MirroredInX : centre, size));
                    Count(1, line);
                }

                break;
            case "LWPOLYLINE":
                Add(kind, data, line, Polyline(data.Where(p => p.Code is 10 or 20 or 42), ((int)Number(data, 70, 0) & 1) == 1));
                break;
            default:
                Skip(kind);
                break;
        }

        return end;
    }

    private int Next(int start)
    {
        var end = start + 1;
        while (end < _pairs.Count && _pairs[end].Code != 0)
        {
            end++;
        }

        return end;
    }

    // Not in paper space, not hidden, in the plane.
    private bool IsSeen(List<(int Code, string Value, int Line)> data)
    {
        if ((int)Number(data, 67, 0) == 1 || (int)Number(data, 60, 0) == 1)
        {
            return false;
        }

        if (Math.Abs(Number(data, 230, 1)) < 0.999)
        {
            Skip("TILTED");
            return false;
        }

        return true;
    }

    private static bool IsFromBehind(List<(int Code, string Value, int Line)> data) => data.Any(p => p.Code == 230 && p.Value.StartsWith('-'));

    private void Skip(string kind)
    {
        var name = new string([.. kind.Where(c => char.IsAsciiLetterOrDigit(c) || c == '_').Take(20)]);
        if (_skipped.Count < 20 || _skipped.ContainsKey(name))
        {
            _skipped[name] = _skipped.GetValueOrDefault(name) + 1;
        }
    }

    private void Add(string kind, List<(int Code, string Value, int Line)> data, int line, DrawnPath? path)
    {
        if (_isWrong || path is not { } drawn)
        {
            return;
        }

        // A line has its ends in space; the rest is drawn on a plane that is seen from behind.
        if (kind != "LINE" && IsFromBehind(data))
        {
            drawn = drawn with { Points = [.. drawn.Points.Select(p => new BulgedPoint(p.At.MirroredInX, -p.Bulge))] };
        }

        _paths.Add(new(kind, Layer(data), line, drawn));
        Count(drawn.Points.Length, line);
    }

    private void Count(int points, int line)
    {
        _points += points;
        if (_paths.Count + _circles.Count > DxfWrong.MostPieces || _points > DxfWrong.MostPieces)
        {
            Wrong(DxfMistake.TooMuch, line, "");
        }
    }

    private DrawnPath? Polyline(IEnumerable<(int Code, string Value, int Line)> data, bool isClosed)
    {
        List<BulgedPoint> points = [];
        double? x = null;
        foreach (var pair in data)
        {
            var number = Value(pair);
            if (pair.Code == 10)
            {
                x = number;
            }
            else if (pair.Code == 20 && x is { } known)
            {
                points.Add(new(new(known, number), 0));
                x = null;
            }
            else if (pair.Code == 42 && points.Count > 0)
            {
                points[^1] = points[^1] with { Bulge = number };
            }
        }

        return points.Count < 2 ? null : new([.. points], isClosed);
    }

    private double? Radius(List<(int Code, string Value, int Line)> data, int line) => Needed(data, 40, line) is var radius && radius > 0 ? radius : null;

    private double Needed(List<(int Code, string Value, int Line)> data, int code, int line)
    {
        if (data.All(p => p.Code != code))
        {
            Wrong(DxfMistake.NumberMissing, line, string.Create(CultureInfo.InvariantCulture, $"no group code {code}"), Layer(data));
        }

        return Number(data, code, 0);
    }

    private double Number(List<(int Code, string Value, int Line)> data, int code, double otherwise)
    {
        foreach (var pair in data)
        {
            if (pair.Code == code)
            {
                return Value(pair);
            }
        }

        return otherwise;
    }

    private double Value((int Code, string Value, int Line) pair)
    {
        if (double.TryParse(pair.Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && Math.Abs(number) <= Farthest)
        {
            return number;
        }

        Wrong(DxfMistake.BadNumber, pair.Line + 1, new string([.. pair.Value.Where(c => !char.IsControl(c))]));
        return 0;
    }

    private static string Layer(List<(int Code, string Value, int Line)> data) =>
        data.FirstOrDefault(p => p.Code == 8).Value is { } name ? new string([.. name.Where(c => !char.IsControl(c)).Take(60)]) : "0";
}
