using System.Collections.Immutable;

namespace BracketGen.Profiles.Interview;

/// <summary>Profiles that lie near a job that is begun; paths from the job's folder.</summary>
/// <param name="Vehicles">Vehicles.</param>
/// <param name="Bodies">Throttle bodies.</param>
/// <param name="Shops">Shops.</param>
internal sealed record FoundProfiles(ImmutableArray<string> Vehicles, ImmutableArray<string> Bodies, ImmutableArray<string> Shops);
