using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Geometry;
using BracketGen.Profiles.Interview;
using BracketGen.Units;
using BracketGen.Words.Interview;

namespace BracketGen.Cli.Interview;

/// <summary>Reads a direction as a word, as two angles, or as three numbers, into the throttle frame.</summary>
internal sealed class DirectionReader(NumberReader numbers, Conversation talk)
{
    /// <summary>The direction, or what is wrong with the answer.</summary>
    /// <param name="question">What was asked.</param>
    /// <param name="answer">What was typed.</param>
    /// <param name="parts">The same, in its numbers.</param>
    /// <param name="answered">An answer before, by section and key: where up and the bulkhead are.</param>
    public GivenAnswer Of(Question question, string answer, ImmutableArray<string> parts, Func<string, string, string?> answered)
    {
        if (parts.All(p => HandWritten.Read(p) is not null))
        {
            return parts.Length switch
            {
                2 => OfAngles(parts),
                3 => numbers.Of(parts, [", "], UnitTable.One, List),
                _ => GivenAnswer.Wrong(InterviewText.DirectionWanted),
            };
        }

        // In a job up is where the engine sits; where that is asked, and for the throttle body alone, it is y.
        var isOfBody = question.Id is QuestionId.MountNormal or QuestionId.Up or QuestionId.BulkheadWay;
        var up = isOfBody ? new Vector3(0, 1, 0) : Vector(answered("", "up"));
        if (DirectionWords.Of(answer, up, Vector(answered(Answers.Unwritten, JobQuestions.BulkheadWay))) is { } way)
        {
            var said = Written(way);
            talk.Say(InterviewText.DirectionIs(string.Join(", ", said)));
            return new(List(said), answer, null);
        }

        return GivenAnswer.Wrong(
            DirectionWords.NeedsUp(answer) ? InterviewText.UpWanted
            : DirectionWords.NeedsBulkhead(answer) && !isOfBody ? InterviewText.BulkheadWanted
            : InterviewText.DirectionWanted);
    }

    // The angle in the quadrant's plane, counter-clockwise from x, and the angle out of it, towards the viewer.
    private GivenAnswer OfAngles(ImmutableArray<string> parts)
    {
        string[] angles = [];
        var given = numbers.Of(parts, [", "], UnitTable.Degree, written => List(angles = [.. written]));
        if (given.Toml is null)
        {
            return given;
        }

        var radians = angles.Select(a => QuantityText.Split(a.Trim('"')) is var (value, unit)
            ? unit.Length == 0 ? Angle.FromDegrees(value).Radians : UnitTable.Find(unit) is { Kind: Quantity.Angle } known ? value * known.Factor : double.NaN
            : double.NaN).ToArray();
        if (!radians.All(double.IsFinite) || Math.Abs(radians[1]) > Math.PI / 2 + Tolerance.NoDirection)
        {
            return GivenAnswer.Wrong(InterviewText.DirectionWanted);
        }

        var (polar, lean) = (radians[0], radians[1]);
        var said = Written(new(Math.Cos(lean) * Math.Cos(polar), Math.Cos(lean) * Math.Sin(polar), Math.Sin(lean)));
        talk.Say(InterviewText.DirectionIs(string.Join(", ", said)));
        return given with { Toml = List(said) };
    }

    private static Vector3? Vector(string? written)
    {
        var numbers = written?.Trim('[', ']').Split(',').Select(n => double.TryParse(n, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? value : double.NaN).ToArray();
        return numbers is [var x, var y, var z] && numbers.All(double.IsFinite) && new Vector3(x, y, z).Length > Tolerance.NoDirection ? new Vector3(x, y, z).Unit : null;
    }

    private static string[] Written(Vector3 way) => [.. new[] { way.X, way.Y, way.Z }.Select(c => UnitSystems.Decimals(c, "0.#########"))];

    private static string List(IReadOnlyList<string> items) => $"[{string.Join(", ", items)}]";
}
