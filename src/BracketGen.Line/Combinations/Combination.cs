using BracketGen.Design.Inputs;
using BracketGen.Profiles.Family;

namespace BracketGen.Line.Combinations;

/// <summary>One vehicle on one throttle body, in one material and with one option.</summary>
/// <param name="Order">Its place in the line, from 0: throttle bodies within vehicles, materials within those, options last.</param>
/// <param name="Vehicle">The vehicle, read or not.</param>
/// <param name="Body">The throttle body, read or not.</param>
/// <param name="Material">The choice of material.</param>
/// <param name="Option">The option.</param>
public sealed record Combination(
    int Order, LoadedMember<Vehicle> Vehicle, LoadedMember<ThrottleBody> Body, MaterialChoice Material, LoadedOption Option)
{
    /// <summary>Its codes joined by hyphens: what folders, lists and the register know it by.</summary>
    public string Key => string.Join('-', new[] { Vehicle.Code, Body.Code, Material.Code, Option.Option.Code }.Where(c => c.Length > 0));

    /// <summary>Name of the vehicle, or its code where the profile could not be read.</summary>
    public string VehicleName => Vehicle.Value?.Name ?? Vehicle.Code;

    /// <summary>Name of the throttle body, or its code where the profile could not be read.</summary>
    public string BodyName => Body.Value?.Name ?? Body.Code;

    /// <summary>Whether both profiles could be read.</summary>
    public bool IsReadable => Vehicle.Value is not null && Body.Value is not null;

    /// <summary>Names of vehicle, body, material and option, as far as there are any: "Plover, Alder 58, steel".</summary>
    public string Title => string.Join(", ", new[] { VehicleName, BodyName, Material.Name, Option.Option.Name }.Where(n => n.Length > 0));
}
