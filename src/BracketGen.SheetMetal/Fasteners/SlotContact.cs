namespace BracketGen.SheetMetal.Fasteners;

/// <summary>The face on which sheet and boss, or washer and sheet, meet round a screw in a slotted hole: a disc about the screw without the slot.</summary>
/// <remarks>Plane geometry, integrated along the slot over x = radius · sin t.</remarks>
/// <param name="Radius">Radius of the disc (mm).</param>
/// <param name="Width">Width of the slot (mm).</param>
/// <param name="Ahead">From the screw's axis to the centre of the slot's end on one side (mm), zero or more.</param>
/// <param name="Behind">The same on the other side.</param>
public readonly record struct SlotContact(double Radius, double Width, double Ahead, double Behind)
{
    private const int Steps = 256;

    /// <summary>Area that bears (mm²); zero where the slot takes all.</summary>
    public double Area => Over((_, gap, edge) => edge - gap);

    /// <summary>Moment of inertia of what bears, about the line across the slot through the screw's axis (mm⁴): the weaker of both ways.</summary>
    public double Inertia => Over((x, gap, edge) => x * x * (edge - gap));

    /// <summary>Mean distance from the screw's axis of what bears (mm): the arm of friction under even pressure; zero where nothing bears.</summary>
    public double MeanRadius
    {
        get
        {
            // ∫√(x² + y²) dy = (y s + x² ln(y + s)) / 2, s the root.
            static double Upwards(double x, double y)
            {
                var s = Math.Sqrt(x * x + y * y);
                return (y * s + x * x * Math.Log(y + s)) / 2;
            }

            var area = Area;
            return area > 0 ? Over((x, gap, edge) => Upwards(x, edge) - Upwards(x, gap)) / area : 0;
        }
    }

    // Both sides of the slot; x is never zero.
    private double Over(Func<double, double, double, double> column)
    {
        double half = Width / 2, sum = 0;
        for (var i = 0; i < Steps; i++)
        {
            var t = Math.PI * ((i + 0.5) / Steps - 0.5);
            double x = Radius * Math.Sin(t), edge = Radius * Math.Cos(t);
            var past = Math.Max(0, Math.Max(x - Ahead, -Behind - x));
            var gap = past < half ? Math.Sqrt(half * half - past * past) : 0;
            sum += edge > gap ? 2 * column(x, gap, edge) * edge : 0;
        }

        return sum * Math.PI / Steps;
    }
}
