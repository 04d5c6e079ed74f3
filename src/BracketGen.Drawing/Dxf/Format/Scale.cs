using BracketGen.Drawing.Dxf.Model;
using BracketGen.Geometry;
using BracketGen.Units;

namespace BracketGen.Drawing.Dxf.Format;

/// <summary>From millimetres to the file's unit.</summary>
internal readonly record struct Scale(DxfUnits Units)
{
    // Division keeps whole inches whole.
    private double PerUnit => Units == DxfUnits.Inches ? UnitTable.InchLength.Factor : 1;

    public double Of(double length) => length / PerUnit;

    public Vector2 Of(Vector2 point) => point / PerUnit;

    /// <summary>Value of $INSUNITS (DXF Reference, HEADER).</summary>
    public int Code => Units == DxfUnits.Inches ? 1 : 4;

    /// <summary>Value of $MEASUREMENT: 1 metric.</summary>
    public int Metric => Units == DxfUnits.Inches ? 0 : 1;

    /// <summary>The unit in words.</summary>
    public string Words => Units == DxfUnits.Inches ? "inches" : "millimetres";
}
