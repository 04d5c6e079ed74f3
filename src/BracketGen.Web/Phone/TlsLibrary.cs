using System.Runtime.InteropServices;

namespace BracketGen.Web.Phone;

/// <summary>The system's library for TLS.</summary>
/// <remarks>
/// On Linux the run time loads OpenSSL when something first needs it, and ends the whole program where there is none: it must be looked for before.
/// Windows and macOS have their own. Source of the names: dotnet/runtime, opensslshim.c.
/// </remarks>
public static class TlsLibrary
{
    private const string Override = "DOTNET_OPENSSL_VERSION_OVERRIDE";

    /// <summary>Whether it is there.</summary>
    public static bool IsThere() => OperatingSystem.IsWindows() || OperatingSystem.IsMacOS() || IsThere(Loads, Environment.GetEnvironmentVariable(Override));

    /// <summary>Whether one of OpenSSL's versions can be loaded.</summary>
    /// <param name="loads">Whether a library of this name loads.</param>
    /// <param name="version">Version that the user wants before others; null for none.</param>
    internal static bool IsThere(Func<string, bool> loads, string? version) =>
        new[] { version, "3", "1.1" }.Any(v => !string.IsNullOrEmpty(v) && loads($"libssl.so.{v}"));

    private static bool Loads(string name)
    {
        if (!NativeLibrary.TryLoad(name, out var handle))
        {
            return false;
        }

        NativeLibrary.Free(handle);
        return true;
    }
}
