using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.ShopDrawing;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Inspecting;

/// <summary>The bracket from a corner, with the letters of its holes.</summary>
internal static class InspectionPicture
{
    /// <summary>The picture, as large as a room (mm) lets it be, to no scale.</summary>
    public static SheetBlock Draw(BracketScene scene, Vector2 room)
    {
        var view = new FormedViews(scene).IsometricView;
        var scale = Math.Min(room.X / view.Bounds.Width, room.Y / view.Bounds.Height);
        var picture = At(scene, view, scale);

        // The letters stand out of it.
        while (picture.Bounds.Width > room.X || picture.Bounds.Height > room.Y)
        {
            scale *= 0.93;
            picture = At(scene, view, scale);
        }

        return picture;
    }

    private static SheetBlock At(BracketScene scene, ViewSketch view, double scale)
    {
        var space = new FreeSpace(view.AtScale(scale));
        foreach (var hole in scene.Bracket.Holes)
        {
            var frame = scene.Bracket.Folded.Flanges[hole.Flange];
            var isSeen = frame.Z.Dot(view.View.Z) > 0;
            var rim = view.View.ToLocal(frame.ToWorld(hole.Centre.Vector + hole.Diameter / 2 * Vector2.FromPolar(1, Angle.FromDegrees(45)), isSeen ? scene.Thickness : 0)).XY;
            space.AddLeader(scale * rim, 0, Angle.FromDegrees(50), hole.Name);
        }

        return SheetBlock.Around(space.Items);
    }
}
