using BracketGen.Geometry;

namespace BracketGen.Strength;

/// <summary>The part can move without being bent: it is not held, or not enough.</summary>
public sealed class NotHeldException : Exception
{
    internal NotHeldException(Vector3 near, Exception inner)
        : base(FormattableString.Invariant(
            $"The part is not held firmly: it can move freely near ({near.X:0.#}, {near.Y:0.#}, {near.Z:0.#}) mm. Check bolts and washers."), inner) =>
        Near = near;

    /// <summary>Where the free motion was found (mm).</summary>
    public Vector3 Near { get; }
}
