using System.Globalization;
using System.Text;

namespace BracketGen.Drawing.Solid.Step;

/// <summary>The instances of a STEP file's data section, numbered from 1 in the order they are added.</summary>
internal sealed class StepData
{
    private readonly StringBuilder _text = new();
    private readonly Dictionary<string, string> _shared = [];
    private int _count;

    /// <summary>Adds an instance; the name by which others refer to it.</summary>
    public string Add(string instance)
    {
        var name = "#" + (++_count).ToString(CultureInfo.InvariantCulture);
        _text.Append(name).Append('=').Append(instance).Append(";\n");
        return name;
    }

    /// <summary>Adds an instance unless the same one is there already: for points and directions, which many refer to.</summary>
    public string Share(string instance)
    {
        if (!_shared.TryGetValue(instance, out var name))
        {
            _shared.Add(instance, name = Add(instance));
        }

        return name;
    }

    /// <summary>All instances, a line each.</summary>
    public override string ToString() => _text.ToString();
}
