namespace BracketGen.Strength;

/// <summary>The flat pattern cannot be meshed: its contours cross or touch.</summary>
public sealed class MeshException : Exception
{
    internal MeshException(string message)
        : base(message)
    {
    }
}
