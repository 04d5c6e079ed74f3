using BracketGen.Geometry;
using BracketGen.Mechanism.Numerics;

namespace BracketGen.Mechanism.Cables;

/// <summary>The routes of arc, line, arc between ends in one plane, from the common tangents of their circles.</summary>
/// <remarks>
/// Each end has a circle to its left and one to its right. From centre to centre w = ℓ d + k (left of d), d the line's direction, ℓ its length,
/// k zero between circles of one sense and plus or minus two radii between circles of opposite sense: so d = (ℓ w - k (left of w))/w². For
/// ends out of one plane the routes of their projections are where a search in space begins.
/// </remarks>
internal static class PlaneRoutes
{
    /// <summary>The line's direction of each route, and whether its arcs turn by more than half a turn, in every plane that two of the directions span.</summary>
    public static List<(Vector3 Along, bool LongFirst, bool LongLast)> Of(Vector3 from, Vector3 leaving, Vector3 to, Vector3 arriving, double radius)
    {
        var routes = new List<(Vector3, bool, bool)>();
        var chord = to - from;
        foreach (var normal in new[] { chord.Cross(leaving), chord.Cross(arriving), leaving.Cross(arriving) })
        {
            if (normal.Length > MechanismTolerance.NoStart * Math.Max(1, chord.Length))
            {
                InPlane(normal.Unit, chord, leaving, arriving, radius, routes);
            }
        }

        return routes;
    }

    private static void InPlane(
        Vector3 normal, Vector3 chord, Vector3 leaving, Vector3 arriving, double radius, List<(Vector3, bool, bool)> routes)
    {
        Vector3 Flat(Vector3 v) => v - v.Dot(normal) * normal;
        Vector3 first = Flat(leaving), last = Flat(arriving);
        if (first.Length < MechanismTolerance.NoStart || last.Length < MechanismTolerance.NoStart)
        {
            return;
        }

        (first, last) = (first.Unit, last.Unit);
        for (var sense = 0; sense < 4; sense++)
        {
            // 1 turns left, -1 right.
            int atFirst = sense % 2 == 0 ? 1 : -1, atLast = sense < 2 ? 1 : -1;
            var w = Flat(chord) + radius * (atLast * normal.Cross(last) - atFirst * normal.Cross(first));
            double k = radius * (atLast - atFirst), square = w.Dot(w), left = square - k * k;
            if (left < 0 || square < MechanismTolerance.OneLine * radius * radius)
            {
                continue; // The circles overlap, or are one and leave the direction open.
            }

            var along = (Math.Sqrt(left) * w - k * normal.Cross(w)) / square;
            bool IsLong(Vector3 a, Vector3 b, int s) => s * normal.Dot(a.Cross(b)) < 0;
            routes.Add((along.Unit, IsLong(first, along, atFirst), IsLong(along, last, atLast)));
        }
    }
}
