using BracketGen.Design.Checks;
using BracketGen.Design.Kit;
using BracketGen.Profiles.Errors;

namespace BracketGen.Web.Desk;

/// <summary>What makes the throttle body of a desk complete.</summary>
/// <param name="Errors">Errors in the files of job, lists and brackets; with one there is no study.</param>
/// <param name="Study">The study.</param>
public sealed record DeskKit(IReadOnlyList<ProfileError> Errors, KitStudy? Study)
{
    /// <summary>Asks the solver.</summary>
    /// <param name="desk">The desk, with the lists of parts.</param>
    /// <param name="withStrength">Whether the strength of brackets is calculated; without it none is proven.</param>
    public static DeskKit Of(JobDesk desk, bool withStrength)
    {
        var kit = desk.ReadKit();
        return kit.IsRead ? new([], KitStudy.Of(kit.Value, withStrength ? StrengthDetail.Usual : null)) : new(kit.Errors, null);
    }
}
