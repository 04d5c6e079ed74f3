using BracketGen.Design.Inputs;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Pedals;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary>A vehicle's file.</summary>
internal static class VehicleSection
{
    private static readonly Key<string> Name = new("name", new TextForm(80), "Name of the vehicle.");

    private static readonly Key<Cable> Cable = new("cable", CableSection.Form, "The throttle cable the vehicle brings.");

    private static readonly Key<Pedal> Pedal = new("pedal", PedalSection.Form, "The accelerator pedal the vehicle brings.");

    private static readonly Key<Controller> Controller = Key<Controller>.WithDefault(
        "controller", ControllerSection.Form, "The controller that reads the position sensor. If left out: one that learns its own zero.", Design.Inputs.Controller.Usual);

    public static Section<Vehicle> Form { get; } = new(
        [Name, Cable, Pedal, Controller], v => new(v.Get(Name), v.Get(Cable), v.Get(Pedal)) { Controller = v.Get(Controller) });
}
