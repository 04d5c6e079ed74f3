using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Drawing.Solid;

/// <summary>Volume of the solid that stands for a formed part.</summary>
public static class FormedVolume
{
    /// <summary>
    /// The volume (mm³) of flanges as plates and bends as ring sectors of the sheet's full thickness. Per bend of length b, bend angle α and inside radius r it is
    /// b t (α (r + t/2) - a) more than the blank's, with the allowance a = α (r + k t): b α t² (1/2 - k). The blank's volume is what is cut and what a scale
    /// finds: in truth the sheet gets thinner in the bend.
    /// </summary>
    /// <param name="flat">The flat pattern; no hole lies in a bend.</param>
    public static double Of(FlatPattern flat)
    {
        var t = flat.Thickness;
        return t * (flat.Blank.Area + flat.Bends.Sum(b => b.Length * (b.Turn.Magnitude.Radians * (b.InsideRadius + t / 2) - b.Allowance)));
    }
}
