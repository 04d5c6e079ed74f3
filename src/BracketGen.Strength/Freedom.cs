namespace BracketGen.Strength;

/// <summary>One of the six ways a node of a shell can move.</summary>
public enum Freedom
{
    /// <summary>Along x (mm).</summary>
    X,

    /// <summary>Along y (mm).</summary>
    Y,

    /// <summary>Along z (mm).</summary>
    Z,

    /// <summary>Rotation about x, right-hand rule (rad).</summary>
    AboutX,

    /// <summary>Rotation about y, right-hand rule (rad).</summary>
    AboutY,

    /// <summary>Rotation about z, right-hand rule (rad).</summary>
    AboutZ,
}
