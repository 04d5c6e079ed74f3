using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Design.Part;

/// <summary>What all brackets of one sheet on one mount face for one cable have in common: worked out once, not for each of them.</summary>
public sealed class SheetOnMount
{
    /// <summary>Works it out.</summary>
    /// <param name="mount">The face it is bolted to.</param>
    /// <param name="cable">The cable.</param>
    /// <param name="preferences">What is wanted.</param>
    /// <param name="stock">The sheet.</param>
    /// <param name="rates">What work and sheet cost.</param>
    public SheetOnMount(MountFace mount, Cable cable, Preferences preferences, Stock stock, ShopRates rates)
    {
        (Mount, Cable, Preferences, Stock, Rates) = (mount, cable, preferences, stock, rates);
        var face = MountFrame.Of(mount);
        Frame = face.Frame;
        Seat = StopSeat.For(cable, preferences.StopOpening, stock.Thickness, stock.Material.Finish);
        StopMetalRadius = Seat.MetalRadius(stock.Thickness);
        Straight = BracketShape.StraightBesideBend(stock.Thickness);
        var slot = preferences.MountSlots?.On(Frame);
        Bolts = [.. mount.OwnHoles.Select((hole, i) => BracketShape.BoltHole(hole, i, MountFrame.ToFlat(face.ToFace(hole.At)), stock, slot))];
        SecondBolts = [.. mount.Holes.Where(h => h.IsOnSecond).Select((hole, i) => BracketShape.BoltHole(hole, Bolts.Length + i, default, stock, null))];
        BoltMetal = [.. Bolts.SelectMany(b => b.MetalDiscs())];
    }

    /// <summary>The face it is bolted to.</summary>
    public MountFace Mount { get; }

    /// <summary>The cable.</summary>
    public Cable Cable { get; }

    /// <summary>What is wanted.</summary>
    public Preferences Preferences { get; }

    /// <summary>The sheet.</summary>
    public Stock Stock { get; }

    /// <summary>What work and sheet cost.</summary>
    public ShopRates Rates { get; }

    /// <summary>The mount flange's frame, that of the mount face: flat coordinates and height to the throttle frame.</summary>
    public Frame Frame { get; }

    /// <summary>What the outer's end needs.</summary>
    public StopSeat Seat { get; }

    /// <summary>Radius of metal around the stop's opening (mm).</summary>
    public double StopMetalRadius { get; }

    /// <summary>Straight edge beside a bend (mm).</summary>
    public double Straight { get; }

    /// <summary>The bolt holes of the mount flange, flat coordinates (mm).</summary>
    public ImmutableArray<BracketHole> Bolts { get; }

    /// <summary>The bolt holes of the second mount flange, but for their place, which depends on the die; empty where there is none.</summary>
    public ImmutableArray<BracketHole> SecondBolts { get; }

    /// <summary>What must have metal around the bolts of the mount flange (mm).</summary>
    public IReadOnlyList<Disc> BoltMetal { get; }
}
