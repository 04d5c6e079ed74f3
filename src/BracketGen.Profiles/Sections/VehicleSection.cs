using BracketGen.Design.Inputs;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Pedals;
using BracketGen.Profiles.Forms;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary>A vehicle's file.</summary>
internal static class VehicleSection
{
    private static readonly Key<string> Name = new("name", new TextForm(80), "Name of the vehicle.");

    private static readonly Key<Cable> Cable = new("cable", CableSection.Form, "The throttle cable the vehicle brings.");

    private static readonly Key<Pedal> Pedal = new("pedal", PedalSection.Form, "The accelerator pedal the vehicle brings.");

    private static readonly Key<Controller> Controller = Key<Controller>.WithDefault(
        "controller", ControllerSection.Form, "The controller that reads the position sensor. If left out: one that learns its own zero.", Design.Inputs.Controller.Usual);

    private static readonly Key<double> GrossMass = new(
        "gross_mass", new QuantityForm(UnitTable.Kilogram, 100, 100_000), "Maximum mass of the laden vehicle: above 4,536 kg 49 CFR 571.124 gives the throttle 2 s to close instead of 1 s (from memory). If left out: 1 s.", isRequired: false);

    // 10,000 lb.
    private const double Heavy = 4.536;

    public static Section<Vehicle> Form { get; } = new(
        [Name, Cable, Pedal, Controller, GrossMass],
        v => new(v.Get(Name), v.Get(Cable), v.Get(Pedal)) { Controller = v.Get(Controller), IsHeavy = v.OrNull(GrossMass) > Heavy });
}
