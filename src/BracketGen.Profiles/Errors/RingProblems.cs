namespace BracketGen.Profiles.Errors;

/// <summary>Why an adapter ring cannot be designed as it is described.</summary>
public enum RingMistake
{
    /// <summary>It would lie between flange and manifold: it moves the body and needs gaskets.</summary>
    UnderFlange,

    /// <summary>A flange bolt's seat does not lie the ring's thickness under the mount face.</summary>
    BoltOffFlange,

    /// <summary>Two flange bolts in one place, so that nothing leads the ring.</summary>
    BoltsTogether,

    /// <summary>A flange bolt is screwed in as deep as it is long, or deeper.</summary>
    BoltTooShort,

    /// <summary>A hole reaches into the bore.</summary>
    HoleInBore,

    /// <summary>A hole runs into a flange bolt's.</summary>
    HoleAtBolt,

    /// <summary>A mount hole is a stud.</summary>
    Stud,

    /// <summary>A mount hole lies lower than the ring's top.</summary>
    Spacer,

    /// <summary>A mount hole has a ±, although the ring is still to be made.</summary>
    PlusMinus,

    /// <summary>A plain hole says another thickness than the ring has.</summary>
    Thickness,

    /// <summary>A tapped hole is to have more thread than the ring is thick.</summary>
    ThreadDepth,

    /// <summary>The mount has a second face.</summary>
    SecondFace,

    /// <summary>The mount holes are to be slotted.</summary>
    Slots,

    /// <summary>The throttle body is one of a family, whose parts are bracket and nothing else.</summary>
    Family,
}

/// <summary>An adapter ring that does not go with the mount.</summary>
/// <param name="Mistake">What is wrong.</param>
/// <param name="Hole">The hole that it is about: H1 or F1; empty for none.</param>
/// <param name="Value">What was read (mm).</param>
/// <param name="Limit">What is allowed (mm).</param>
/// <param name="Other">The other hole; empty for none.</param>
public sealed record RingWrong(RingMistake Mistake, string Hole = "", double Value = 0, double Limit = 0, string Other = "") : ProfileProblem;
