using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace BracketGen.Web.Serving;

/// <summary>How much of the machine those may hold who send nothing, or slowly.</summary>
/// <param name="Connections">Connections at once; null where something else counts them.</param>
/// <param name="Head">How long the head of a request may take.</param>
/// <param name="Silence">How long a connection may say nothing between requests.</param>
internal sealed record ServingLimits(long? Connections, TimeSpan Head, TimeSpan Silence)
{
    /// <summary>For this machine: a program that leaves connections half open must leave a thousand before the page waits, and then for seconds.</summary>
    public static ServingLimits ThisMachine { get; } = new(1024, TimeSpan.FromSeconds(5), TimeSpan.FromSeconds(60));

    /// <summary>For the network, where connections are counted by address.</summary>
    public static ServingLimits Network { get; } = new(null, TimeSpan.FromSeconds(10), TimeSpan.FromSeconds(60));

    /// <summary>Sets them.</summary>
    public void Set(KestrelServerOptions options)
    {
        options.AddServerHeader = false;
        options.Limits.MaxRequestBodySize = PageServer.MaxBody;
        options.Limits.MaxConcurrentConnections = Connections;
        options.Limits.RequestHeadersTimeout = Head;
        options.Limits.KeepAliveTimeout = Silence;
    }
}
