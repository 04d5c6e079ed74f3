using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using BracketGen.Design.Inputs;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Pedals;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Toml;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary>A vehicle's file.</summary>
internal static class VehicleSection
{
    private static readonly Key<string> Name = new("name", new TextForm(80), "Name of the vehicle.");

    private static readonly Key<Cable> Cable = new("cable", new OneCableForm(CableSection.Form), "The throttle cable the vehicle brings.");

    private static readonly Key<Pedal> Pedal = new("pedal", PedalSection.Form, "The accelerator pedal the vehicle brings.");

    private static readonly Key<Controller> Controller = Key<Controller>.WithDefault(
        "controller", ControllerSection.Form, "The controller that reads the position sensor. If left out: one that learns its own zero.", Design.Inputs.Controller.Usual);

    private static readonly Key<double> GrossMass = new(
        "gross_mass", new QuantityForm(UnitTable.Kilogram, 100, 100_000), "Maximum mass of the laden vehicle: above 4,536 kg 49 CFR 571.124 gives the throttle 2 s to close instead of 1 s (from memory). If left out: 1 s.", isRequired: false);

    private static readonly Key<ImmutableArray<OtherCable>> OtherCables = Key<ImmutableArray<OtherCable>>.WithDefault(
        "other_cables", new ListForm<OtherCable>(OtherCableSection.Form, 0, 8), "Cables that the vehicle brings besides the one from the pedal: cruise control, kick-down, hand throttle.", []);

    // 10,000 lb.
    private const double Heavy = 4.536;

    public static Section<Vehicle> Form { get; } = new(
        [Name, Cable, Pedal, Controller, GrossMass, OtherCables],
        v => new(v.Get(Name), v.Get(Cable), v.Get(Pedal)) { Controller = v.Get(Controller), IsHeavy = v.OrNull(GrossMass) > Heavy, OtherCables = v.Get(OtherCables) },
        [new([OtherCables], CheckNames)]);

    private static void CheckNames(SectionValues values)
    {
        var cables = values.Get(OtherCables);
        for (var i = 0; i < cables.Length; i++)
        {
            if (cables.Take(i).Any(c => c.Name == cables[i].Name))
            {
                values.ReportItem(OtherCables, i, OtherCableSection.Name.Name, new GivenTwice(Repeated.Cable));
            }
        }
    }
}

/// <summary>The cable from the pedal: one, and no list of them.</summary>
/// <param name="one">The form of one cable.</param>
internal sealed class OneCableForm(Section<Cable> one) : Form<Cable>, ISectionLike
{
    public override AllowedValue Allowed => one.Allowed;

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out Cable result)
    {
        if (value is TomlList list)
        {
            result = null;
            list.Report(key, reading, new SecondCable(list.Items.Count));
            return false;
        }

        return one.TryRead(value, key, reading, out result);
    }

    public override Unit? UnitAt(ReadOnlySpan<string> path) => one.UnitAt(path);

    public override JsonObject Schema(SharedSchemas shared) => one.Schema(shared);
}
