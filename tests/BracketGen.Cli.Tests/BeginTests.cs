using BracketGen.Cli.Terminal;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;
using BracketGen.Profiles;
using BracketGen.Profiles.Family;
using BracketGen.TestSupport;
using BracketGen.Words.Report;

namespace BracketGen.Cli.Tests;

/// <summary>Profiles begun from answers typed in the terminal.</summary>
public class BeginTests
{
    private static readonly string[] Plover =
    [
        "Plover", "1.5", "5", "138 +/- 1", "", "60", "", "2.1", "7x19", "barrel", "6", "8", "1", "M8x1", "13", "5", "14", "51 ± 0.5", "", "3.4", "0.5 +- 0.2", "1.2 +/- 0.3", "1.4 +/- 0.3", "45000 +/- 4000", "", "",
    ];

    private static readonly string[] Alder =
    [
        "Alder 58", "1", "58", "8", "", "31.5 +/- 0.2", "84 +/- 1", "-20 +/- 1", "150", "3", "2.2", "34.5", "9", "14", "barrel", "7.2", "8.2", "along the shaft",
        "2", "0.27 +/- 0.03", "0.52", "0.28 +/- 0.03", "0.53", "0.55 +/- 0.05", "10 lbf in +/- 1 lbf in", "0.01 +/- 0.005", "no", "", "520 mV", "4.46", "no", "10", "-63", "0", "72", "60", "60", "0, 0, 1", "", "", "", "15", "16", "", "M6", "15", "", "-50 -22 -24", "", "-50, 12, -24",
        "0.02", "cast aluminium", "4", "6500", "800 +/- 50", "1", "idle \"valve\"", "", "42, -60, -45", "85, -20, 15",
    ];

    [Fact]
    public void A_vehicle_is_written_as_it_was_answered()
    {
        using var place = new Workplace();
        var file = place.PathOf("profiles", "vehicles", "new.toml");
        var result = BracketGenProgram.Answer(Plover, "begin", "vehicle", file);
        Assert.True(result.ExitCode == ExitCode.Pass, result.Output + result.Errors);
        var vehicle = ProfileReader.ReadVehicle(file, new DiskFileSource()).Value!;
        var example = ProfileReader.ReadVehicle(place.PathOf("profiles", "vehicles", "plover.toml"), new DiskFileSource()).Value!;
        Assert.Equal(example with { Cable = example.Cable with { OuterLength = null, Friction = vehicle.Cable.Friction } }, vehicle);
        Assert.Equal(Evidence.Assumed, vehicle.Cable.Friction.Evidence); // it is not asked for
        Assert.StartsWith("#:schema ../schemas/vehicle.schema.json\nprofile = \"vehicle\"\n", File.ReadAllText(file), StringComparison.Ordinal);
    }

    [Fact]
    public void A_throttle_body_is_written_as_it_was_answered()
    {
        using var place = new Workplace();
        var file = place.PathOf("new.toml");
        var result = BracketGenProgram.Answer(Alder, "begin", "throttle-body", file);
        Assert.True(result.ExitCode == ExitCode.Pass, result.Output + result.Errors);
        var body = ProfileReader.ReadThrottleBody(file, new DiskFileSource()).Value!;
        Assert.Equal(new CircularGroove(new(31.5, 0.2)), body.Quadrant.Groove);
        Assert.Equal(1129.848, body.Springs.TorqueOpen.Value, 0.001); // NIST SP 811, B.8
        Assert.Equal([new(new(270, 30), 520), new(new(280, 30), 530)], body.Springs.Each.Select(s => s with { TorqueOpen = s.TorqueOpen.Value }));
        Assert.Equal(new(10, 5), body.ShaftDrag);
        Assert.Equal(0.52, body.Sensor!.ClosedVolts);
        Assert.Equal(Angle.FromDegrees(10), body.Sensor.Slot);
        Assert.Equal(new ThrottlePoint(-50, -22, -24), body.Mount.Holes[0].At);
        Assert.Equal("M6", body.Mount.Holes[1].Thread.Name);
        Assert.Equal((16, null), (body.Mount.Holes[0].ThreadDepth, body.Mount.Holes[1].ThreadDepth));
        Assert.Equal(0.02, body.Mount.Flatness);
        Assert.Equal(new Engine(4, 6500, 4) { IdleSpeed = new(800, 50) }, body.Engine);
        Assert.Equal(new FittingPocket(PocketKind.Bore, 7.2, 7.2, 8.2, true), body.Quadrant.PocketShape);
        Assert.Equal(new BoreAxis(-63, Angle.Zero, 72, 60, 60), body.BoreAxis);
        Assert.Equal("idle \"valve\"", Assert.Single(body.KeepOuts).Name);
    }

    [Fact]
    public void Studs_plain_holes_spacers_and_other_cables_are_asked_for()
    {
        using var place = new Workplace();
        var file = place.PathOf("new.toml");
        var from = Array.IndexOf(Alder, "0, 0, 1") + 2;
        string[] holes = ["stud", "1/4-28 UNF", "16", "5/8 in", "0.5 in", "through", "1/4-20 UNC", "16 mm", "6.8 mm", "9 mm", "20 mm", "-50 -22 -24", "no", "6", "-50, 12, -30"];
        var result = BracketGenProgram.Answer([.. Alder[..from], .. holes, .. Alder[(from + 11)..]], "begin", "throttle-body", file);
        Assert.True(result.ExitCode == ExitCode.Pass, result.Output + result.Errors);
        var mount = ProfileReader.ReadThrottleBody(file, new DiskFileSource()).Value!.Mount;
        Assert.Equal(("1/4-28 UNF", "1/4-20 UNC", 6), (mount.Holes[0].Thread.Name, mount.Holes[1].Thread.Name, mount.Holes[1].SpacerLength));

        var vehicle = place.PathOf("cables.toml");
        result = BracketGenProgram.Answer([.. Plover[..^1], "1", "cruise cable", "cruise control", "actuator on the left wing", "no"], "begin", "vehicle", vehicle);
        Assert.True(result.ExitCode == ExitCode.Pass, result.Output + result.Errors);
        var cable = Assert.Single(ProfileReader.ReadVehicle(vehicle, new DiskFileSource()).Value!.OtherCables);
        Assert.Equal(("cruise cable", CableDuty.CruiseControl, false), (cable.Name, cable.Duty, cable.IsOnPedal));
    }

    [Fact]
    public void An_eccentric_groove_is_asked_for()
    {
        using var place = new Workplace();
        var file = place.PathOf("new.toml");
        string[] answers = [.. Alder[..4], "eccentric circle", .. Alder[6..14], "32 +/- 0.2", "1.5", "40", .. Alder[14..]];
        var result = BracketGenProgram.Answer(answers, "begin", "throttle-body", file);
        Assert.True(result.ExitCode == ExitCode.Pass, result.Output + result.Errors);
        Assert.Equal(
            new EccentricGroove(new(32, 0.2), 1.5, Angle.FromDegrees(40)),
            ProfileReader.ReadThrottleBody(file, new DiskFileSource()).Value!.Quadrant.Groove);
    }

    // The points of a cam that rises from 30 to 34 mm; the worksheet's six.
    [Fact]
    public void A_groove_of_any_shape_is_asked_for_point_by_point()
    {
        using var place = new Workplace();
        var file = place.PathOf("new.toml");
        string[] points = ["-20", "30", "10", "30.6", "40", "31.3", "70", "32.1", "100", "33", "130", "34"];
        string[] answers = [.. Alder[..4], "table", .. Alder[6..14], "0.3", "3", "", .. points[..5], "3000", "20", .. points[6..], "back 21", "31.3", "34", .. Alder[14..]];
        var result = BracketGenProgram.Answer(answers, "begin", "throttle-body", file);
        Assert.True(result.ExitCode == ExitCode.Pass, result.Output + result.Errors);
        foreach (var told in new[] { "from 4 to 36", "quadrant.groove.points[3].radius", "a wire would bridge it", "The table begins at question 16" })
        {
            Assert.Contains(told, result.Output, StringComparison.Ordinal);
        }

        var groove = Assert.IsType<TabulatedGroove>(ProfileReader.ReadThrottleBody(file, new DiskFileSource()).Value!.Quadrant.Groove);
        Assert.Equal([(-20, 30), (10, 30.6), (40, 31.3), (70, 32.1), (100, 33), (130, 34)], groove.Points.Select(p => (Math.Round(p.Polar.Degrees, 9), p.Radius)));
        Assert.Contains("[quadrant.groove]\nshape = \"table\"\nplus_minus = 0.3\n\n[[quadrant.groove.points]]\nangle = -20\nradius = 30\n", File.ReadAllText(file), StringComparison.Ordinal);
    }

    [Fact]
    public void A_pedal_table_is_asked_for_point_by_point()
    {
        using var place = new Workplace();
        var file = place.PathOf("new.toml");
        var at = Array.IndexOf(Plover, "3.4");
        string[] answers = [.. Plover[..(at - 1)], "table", "3", "", "", "90", "24", "175", "50", "51", .. Plover[(at + 1)..]];
        var result = BracketGenProgram.Answer(answers, "begin", "vehicle", file);
        Assert.True(result.ExitCode == ExitCode.Pass, result.Output + result.Errors);
        Assert.Contains("pedal.table[3].pull", result.Output, StringComparison.Ordinal);
        Assert.Equal([(0, 0), (90, 24), (175, 51)], ProfileReader.ReadVehicle(file, new DiskFileSource()).Value!.Pedal.Table!.Points.Select(p => (p.Pad, p.Pull)));
    }

    // Three holes, of which one is off: which one shows when all are there, and the last answer waits until it is put right.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void A_hole_off_the_face_of_the_others_is_named_at_once(int off)
    {
        using var place = new Workplace();
        var file = place.PathOf("new.toml");
        var from = Array.IndexOf(Alder, "0, 0, 1") + 1;
        string[] right = ["-50 -22 -24", "-50 12 -24", "-20 12 -24"];
        string[] typed = [.. right.Select((p, i) => i == off - 1 ? p[..^2] + "22.6" : p)];
        string[] corrected = off == 3 ? [right[2]] : [$"back {48 + 2 * off}", right[off - 1], ""];
        string[] hole = ["", "", "15", "16"];
        string[] answers = [.. Alder[..from], "3", .. hole, .. hole, .. hole, typed[0], "", typed[1], "", typed[2], .. corrected, .. Alder[(from + 12)..]];
        var result = BracketGenProgram.Answer(answers, "begin", "throttle-body", file);
        Assert.True(result.ExitCode == ExitCode.Pass, result.Output + result.Errors);
        Assert.Contains($"Hole {off} seems wrong", result.Output, StringComparison.Ordinal);
        Assert.Contains("1.4 mm", result.Output, StringComparison.Ordinal);
        Assert.Equal([-24, -24, -24], ProfileReader.ReadThrottleBody(file, new DiskFileSource()).Value!.Mount.Holes.Select(h => h.At.Z));
    }

    [Fact]
    public void Centres_with_their_plus_minus_may_lie_beside_the_face_by_it()
    {
        using var place = new Workplace();
        var file = place.PathOf("new.toml");
        var answers = Alder.Select(a => a == "-50 -22 -24" ? "-50 -22 -24 +- 0.3" : a == "-50, 12, -24" ? "-50, 12, -24.2 +/- 0.3 mm" : a).ToList();
        answers.Insert(answers.IndexOf("-50, 12, -24.2 +/- 0.3 mm") + 1, "yes");
        var result = BracketGenProgram.Answer(answers, "begin", "throttle-body", file);
        Assert.True(result.ExitCode == ExitCode.Pass, result.Output + result.Errors);
        Assert.Contains("at = [-50, 12, -24.2]\nplus_minus = [0.3, 0.3, 0.3]\n", File.ReadAllText(file), StringComparison.Ordinal);
    }

    // The same rules and words as in files: unit, range, and one measurement against another, each told at once.
    [Fact]
    public void A_wrong_answer_is_told_at_once_and_asked_for_again()
    {
        using var place = new Workplace();
        var file = place.PathOf("new.toml");
        string[] answers =
        [
            "", "Plover", "1.5 lbf", "-3", "one", "1.5", "1.5", "5", "9", "138 +/-", "back", "5", "138 +/- 1", .. Plover[4..9], "box", .. Plover[9..],
        ];
        var result = BracketGenProgram.Answer(answers, "begin", "vehicle", file);
        Assert.True(result.ExitCode == ExitCode.Pass, result.Output + result.Errors);
        foreach (var told in new[]
        {
            "needs an answer", "lbf is a unit of force", "from 0.5 to 6 mm", "more than wire_diameter", "from 10 to 1000 mm", "both sides of", "barrel, nipple, ball",
        })
        {
            Assert.Contains(told, result.Output, StringComparison.Ordinal);
        }

        Assert.Equal(138, ProfileReader.ReadVehicle(file, new DiskFileSource()).Value!.Cable.FreeInnerLength.Value);
    }

    [Fact]
    public void Back_asks_the_question_before_again()
    {
        using var place = new Workplace();
        var file = place.PathOf("new.toml");
        var result = BracketGenProgram.Answer(["Dunlin", "back", .. Plover[..10], "back", "ball", "6", .. Plover[12..]], "begin", "vehicle", file);
        Assert.True(result.ExitCode == ExitCode.Pass, result.Output + result.Errors);
        var vehicle = ProfileReader.ReadVehicle(file, new DiskFileSource()).Value!;
        Assert.Equal("Plover", vehicle.Name);
        Assert.Equal(new EndFitting(EndFittingKind.Ball, 6, 6), vehicle.Cable.Fitting);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(20)]
    public void The_end_of_input_keeps_the_answers_and_goes_on_from_them(int answers)
    {
        using var place = new Workplace();
        string file = place.PathOf("new.toml"), draft = place.PathOf("new.toml.draft");
        var result = BracketGenProgram.Answer(Plover[..answers], "begin", "vehicle", file);
        Assert.Equal(ExitCode.BadInput, result.ExitCode);
        Assert.Contains(answers == 0 ? "nothing was written" : $"bracketgen begin vehicle {file}", result.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(file));
        Assert.Equal(answers > 0, File.Exists(draft));

        result = BracketGenProgram.Answer([.. answers > 0 ? (string[])["", "maybe", "yes"] : [], .. Plover[answers..]], "begin", "vehicle", file);
        Assert.True(result.ExitCode == ExitCode.Pass, result.Output + result.Errors);
        Assert.False(File.Exists(draft));
        var whole = place.PathOf("whole.toml");
        BracketGenProgram.Answer(Plover, "begin", "vehicle", whole);
        Assert.Equal(File.ReadAllText(whole), File.ReadAllText(file));
    }

    [Fact]
    public void A_draft_that_is_not_gone_on_from_is_left_as_it_is()
    {
        using var place = new Workplace();
        string file = place.PathOf("new.toml"), first = place.PathOf("new.toml.draft"), second = place.PathOf("new.toml.draft-2");
        BracketGenProgram.Answer(Plover[..9], "begin", "vehicle", file);
        var before = File.ReadAllText(first);
        BracketGenProgram.Answer(["no", "Dunlin", "2"], "begin", "vehicle", file);
        Assert.Equal(before, File.ReadAllText(first));
        Assert.Contains("Dunlin", File.ReadAllText(second), StringComparison.Ordinal);

        // Neither the end of input at the offer nor another kind of profile touches them.
        Assert.Equal(ExitCode.BadInput, BracketGenProgram.Answer([], "begin", "vehicle", file).ExitCode);
        var result = BracketGenProgram.Answer(Alder, "begin", "throttle-body", file);
        Assert.True(result.ExitCode == ExitCode.Pass, result.Output + result.Errors);
        Assert.Contains("no draft of a throttle body", result.Output, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(first));
    }

    // A hand in the draft, or another release: what no longer fits is asked for again, the rest stays.
    [Fact]
    public void An_answer_of_the_draft_that_does_not_fit_is_asked_for_again()
    {
        using var place = new Workplace();
        string file = place.PathOf("new.toml"), draft = place.PathOf("new.toml.draft");
        BracketGenProgram.Answer(Plover[..20], "begin", "vehicle", file);
        File.WriteAllText(draft, File.ReadAllText(draft).Replace("outer_diameter: 5 mm", "outer_diameter: 5000 mm", StringComparison.Ordinal));
        var result = BracketGenProgram.Answer(["yes", "5", .. Plover[20..]], "begin", "vehicle", file);
        Assert.True(result.ExitCode == ExitCode.Pass, result.Output + result.Errors);
        Assert.Contains("does not fit: 5000 mm", result.Output, StringComparison.Ordinal);
    }

    // SIGTERM: a shell that runs the tests in the background has its children ignore SIGINT.
    [Fact]
    public void A_stop_signal_leaves_the_draft()
    {
        using var place = new Workplace();
        var file = place.PathOf("new.toml");
        var start = BracketGenProgram.Start("begin", "vehicle", file);
        start.RedirectStandardInput = true;
        using var process = System.Diagnostics.Process.Start(start)!;
        process.StandardInput.WriteLine("Plover");
        process.StandardInput.WriteLine("1.5");
        process.StandardInput.Flush();
        while (process.StandardOutput.ReadLine() is { } line && !line.Contains("outer with a calliper", StringComparison.Ordinal))
        {
        }

        OutsideTool.Require("kill").Run(["-TERM", process.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]);
        if (!process.WaitForExit(TimeSpan.FromMinutes(2)))
        {
            process.Kill();
            Assert.Fail("the signal did not end the program");
        }

        var errors = process.StandardError.ReadToEnd();
        Assert.Contains("new.toml.draft", errors, StringComparison.Ordinal);
        Assert.Contains("wire_diameter: 1.5 mm", File.ReadAllText(file + ".draft"), StringComparison.Ordinal);
    }

    // Inches as a shop writes them; each question that a person must answer is asked.
    [Fact]
    public void A_unit_once_said_is_kept_when_confirmed()
    {
        using var place = new Workplace();
        var file = place.PathOf("new.toml");
        string[] answers =
        [
            "Plover", "1/16\"", "13/64", "yes", "5.43 +/- 0.04 in", "yes", "", "2 3/8″", "", "0,083", "yes", "7x19", "barrel", "15/64", "5/16", "1", "M8x1", "1/2", "3/16", "9/16", "2 +/- 0.02 in", "yes", .. Plover[18..],
        ];
        var result = BracketGenProgram.Answer(answers, "begin", "vehicle", file);
        Assert.True(result.ExitCode == ExitCode.Pass, result.Output + result.Errors);
        Assert.Contains("Outer diameter? (mm)", result.Output, StringComparison.Ordinal);
        Assert.Contains("Free inner length? (in)", result.Output, StringComparison.Ordinal);
        var vehicle = ProfileReader.ReadVehicle(file, new DiskFileSource()).Value!;
        Assert.Equal(25.4 / 16, vehicle.Cable.WireDiameter, 1e-12);
        Assert.Equal(25.4 * 13 / 64, vehicle.Cable.OuterDiameter, 1e-12);
        Assert.Equal((25.4 * 5.43, 25.4 * 0.04), (vehicle.Cable.FreeInnerLength.Value, vehicle.Cable.FreeInnerLength.PlusMinus));
        Assert.Equal(25.4 * 0.083, vehicle.Cable.OuterBore!.Value, 1e-12);
        Assert.Equal(60.325, vehicle.Cable.MinBendRadius, 1e-9);
        Assert.Equal(3.4, vehicle.Pedal.LeverRatio);
    }

    [Fact]
    public void A_comma_is_asked_about()
    {
        using var place = new Workplace();
        var file = place.PathOf("new.toml");
        string[] answers = ["Plover", "1,5", "no", "1,5", "yes", "5", "138,0 +- 1,000", "3", "138,0 +- 1,000", "1", .. Plover[4..]];
        var result = BracketGenProgram.Answer(answers, "begin", "vehicle", file);
        Assert.True(result.ExitCode == ExitCode.Pass, result.Output + result.Errors);
        Assert.Contains("1.5 mm? (yes or no)", result.Output, StringComparison.Ordinal);
        Assert.Contains("1: 138.0 mm +/- 1.000 mm   2: 138.0 mm +/- 1000 mm   3: none of these", result.Output, StringComparison.Ordinal);
        var cable = ProfileReader.ReadVehicle(file, new DiskFileSource()).Value!.Cable;
        Assert.Equal((1.5, new(138, 1)), (cable.WireDiameter, cable.FreeInnerLength));
    }

    [Fact]
    public void Back_to_a_number_keeps_the_answers_after_it()
    {
        using var place = new Workplace();
        var file = place.PathOf("new.toml");
        string[] answers = [.. Plover[..13], "back 40", "back 2", "2", "back 10", "ball", .. Plover[13..]];
        var result = BracketGenProgram.Answer(answers, "begin", "vehicle", file);
        Assert.True(result.ExitCode == ExitCode.Pass, result.Output + result.Errors);
        var cable = ProfileReader.ReadVehicle(file, new DiskFileSource()).Value!.Cable;
        Assert.Equal((2, new EndFitting(EndFittingKind.Ball, 6, 6)), (cable.WireDiameter, cable.Fitting));
    }

    private static readonly string[] Saltmarsh =
    [
        "Saltmarsh Fabrication", "laser", "0.2", "", "", "EUR", "95", "68", "", "", "", "2", "S235JR", "3, 4, 5", "1.3", "zinc plated", "0.008",
        "house steel", "7850", "210", "", "140", "270", "410", "108", "0.5", "1", "3", "certificate of 2026-02-03", "2; 2,5; 3", "yes", "", "bare",
        "press brake", "measured", "2", "20", "3.2", "30", "34", "80", "2", "800", "24", "3.8", "", "", "", "", "",
        "1", "gooseneck 85", "gooseneck", "120", "85", "1", "500", "320", "180", "600 kN", "", "", "", "", "600", "10", "", "", "stays", "5", "1", "S235JR", "3", "3.8", "0.42",
    ];

    [Fact]
    public void A_shop_is_written_as_it_was_answered()
    {
        using var place = new Workplace();
        var file = place.PathOf("profiles", "shops", "new.toml");
        var result = BracketGenProgram.Answer(Saltmarsh, "begin", "shop", file);
        Assert.True(result.ExitCode == ExitCode.Pass, result.Output + result.Errors);
        Assert.Equal(
            """
            #:schema ../schemas/shop.schema.json
            profile = "shop"
            # Bare numbers are in mm, degrees, N, N/mm, MPa, GPa and kg/m3.
            name = "Saltmarsh Fabrication"
            process = "laser"
            kerf = 0.2
            bend_rule = "DIN 6935"
            bend_marks = "etched"

            [rates]
            currency = "EUR"
            cutting_rate = 95
            bending_rate = 68

            [[materials]]
            designation = "S235JR"
            thicknesses = [3, 4, 5]
            price_per_kilogram = 1.3

            [materials.finish]
            kind = "zinc plated"
            thickness = 0.008

            [[materials]]
            designation = "house steel"
            density = 7850
            modulus = 210
            poisson = 0.3
            yield = 140
            min_tensile = 270
            max_tensile = 410
            endurance = 108
            min_radius_across_grain = 0.5
            min_radius_along_grain = 1
            bend_group = "cold-rolled or spring steel"
            source = "certificate of 2026-02-03"
            thicknesses = [2, 2.5, 3]

            [materials.finish]
            kind = "bare"

            [[dies]]
            opening = 20
            inside_radius = 3.2
            angle = 30
            body_width = 34
            shoulder_height = 80
            shoulder_radius = 2
            max_force = 800

            [[dies]]
            opening = 24
            inside_radius = 3.8

            [[punches]]
            name = "gooseneck 85"
            kind = "gooseneck"
            height = 120
            angle = 85
            tip_radius = 1
            max_force = 500

            [press]
            open_height = 320
            stroke = 180
            max_force = "600 kN"
            gauge_max = 600
            finger_width = 10
            gauge_in_bend = "stays"
            tool_sections = 5

            [[test_bends]]
            material = "S235JR"
            thickness = 3
            inside_radius = 3.8
            k = 0.42

            """.ReplaceLineEndings("\n"), File.ReadAllText(file));
        var shop = ProfileReader.ReadShop(file, new DiskFileSource()).Value!;
        Assert.Equal(6, shop.Stock.Length);
    }

    [Fact]
    public void A_shop_with_a_vice_needs_no_press_brake()
    {
        using var place = new Workplace();
        var file = place.PathOf("profiles", "shops", "vice.toml");
        string[] answers = ["Vice", "water jet", "1", "Machinery's Handbook", "none", "", "1", "DC01", "2", "", "2", "", "1", "vice", "bar R5", "5", ""];
        var result = BracketGenProgram.Answer(answers, "begin", "shop", file);
        Assert.True(result.ExitCode == ExitCode.Pass, result.Output + result.Errors);
        var shop = ProfileReader.ReadShop(file, new DiskFileSource()).Value!;
        Assert.Equal(("bar R5", 5), (shop.Tools.Clamps[0].Name, shop.Tools.Clamps[0].Radius));
        Assert.Null(shop.Tools.Press);
    }

    // The job that the program ships, answered: it makes the same bracket.
    [Fact]
    public void A_job_is_written_as_it_was_answered_and_made()
    {
        using var place = new Workplace();
        var file = place.PathOf("profiles", "jobs", "new.toml");
        string[] answers =
        [
            "../vehicles/plover.toml", "../throttle-bodies/alder-58.toml", "../shops/saltmarsh-fabrication.toml", "mm", "0.2, 0.98, 0", "", "2 +/- 0.5", "S235JR, DC01", "", "", "", "", "usual", "80", "", "",
            "-430, 150, -150", "0.85, 0, 0.5", "0", "6", "8", "4", "2", "0, 0, 1", "", "PLV-A58-01", "A", "Throttle cable bracket, Plover, Alder 58", "2026-03-02", "Saltmarsh drawing office", "", "",
        ];
        var result = BracketGenProgram.Answer(answers, "begin", "job", file);
        Assert.True(result.ExitCode == ExitCode.Pass, result.Output + result.Errors);
        var (job, example) = (ProfileReader.ReadJob(file, new DiskFileSource()), ProfileReader.ReadJob(place.PathOf("profiles", "jobs", "plover-alder-58.toml"), new DiskFileSource()));
        Assert.True(job.IsRead);
        Assert.Equal(example.Value!.Document, job.Value!.Document);
        Assert.Equal((example.Value.Up, example.Value.Bulkhead?.Point, example.Value.Movement), (job.Value.Up, job.Value.Bulkhead?.Point, job.Value.Movement));
        string[] made = [.. new[] { "new", "plover-alder-58" }.Select(n =>
        {
            var made = BracketGenProgram.Run("make", place.PathOf("profiles", "jobs", n + ".toml"), "--skip-strength", "--into", place.PathOf("made"));
            Assert.True(File.Exists(place.PathOf("made", n, "flat-pattern.dxf")), made.Output + made.Errors);
            return File.ReadAllText(place.PathOf("made", n, "flat-pattern.dxf"));
        })];
        Assert.Equal(made[1], made[0]);
    }

    [Fact]
    public void A_job_offers_what_lies_near_it_and_asks_what_becomes_of_other_cables()
    {
        using var place = new Workplace();
        var file = place.PathOf("profiles", "jobs", "new.toml");
        string[] answers =
        [
            "../vehicles/none.toml", "../vehicles/dunlin-tourer.toml", "2", "2", "in", "", "", "", "S355MC", "S235JR, dc01", "2 mm", "3 mm", "", "zinc plated", "0.008 mm",
            "own", .. Enumerable.Repeat("", 15), "", "", "", "", "", "laid by", "off", "dead", "", "T-1", "", "Bracket", "", "", "", "",
        ];
        var result = BracketGenProgram.Answer(answers, "begin", "job", file);
        Assert.True(result.ExitCode == ExitCode.Pass, result.Output + result.Errors);
        foreach (var told in new[] { "1: ../vehicles/dunlin-tourer.toml", "1: ../shops/saltmarsh-fabrication.toml   2: ../shops/saltmarsh-vice.toml", "none.toml", "1: DC01   2: S235JR", "What becomes of cruise cable?" })
        {
            Assert.Contains(told, result.Output, StringComparison.Ordinal);
        }

        var job = ProfileReader.ReadJob(file, new DiskFileSource()).Value!;
        Assert.Equal("S235JR, DC01", string.Join(", ", job.Preferences.Materials));
        Assert.Equal(new CableUse("cruise cable", CableFate.LaidBy) { IsOffPedal = true, IsActuatorDead = true }, Assert.Single(job.CableUses));
        Assert.Equal(new Preferences { Materials = job.Preferences.Materials, MaxThickness = 3 }, job.Preferences);
    }

    // Up leans to the right by 30°, the bulkhead is away from the viewer; what was said in those words follows when up is corrected.
    [Fact]
    public void Directions_are_taken_as_words_and_angles()
    {
        using var place = new Workplace();
        var file = place.PathOf("profiles", "jobs", "new.toml");
        string[] answers =
        [
            "../vehicles/plover.toml", "../throttle-bodies/alder-58.toml", "../shops/saltmarsh-fabrication.toml", "mm", "sideways", "30, 0", "away from you", "", "", "", "", "", "", "", "", "", "",
            "-430, 150, -150", "from the firewall", "1", "-400, 160, -140", "Down", "", "back 5", "60 deg, 0", "down", "", "PLV-A58-01", "A", "Throttle cable bracket", "", "", "", "",
        ];
        var result = BracketGenProgram.Answer(answers, "begin", "job", file);
        Assert.True(result.ExitCode == ExitCode.Pass, result.Output + result.Errors);
        Assert.Contains("Answer with one of the words", result.Output, StringComparison.Ordinal);
        Assert.Contains("That is 0.5, 0.866025404, 0.", result.Output, StringComparison.Ordinal);
        var job = ProfileReader.ReadJob(file, new DiskFileSource()).Value!;
        Assert.Equal(0, (job.Up!.Value - new Vector3(0.5, Math.Sqrt(0.75), 0)).Length, 1e-8);
        Assert.Equal(new Vector3(0, 0, 1), job.Bulkhead!.Direction);
        Assert.Equal(0, (job.Bulkhead.Clips[0].Direction!.Value + job.Up.Value).Length, 1e-8);
    }

    [Fact]
    public void Up_and_the_bulkhead_must_be_known_before_they_are_words()
    {
        using var place = new Workplace();
        var file = place.PathOf("profiles", "jobs", "new.toml");
        string[] answers =
        [
            "../vehicles/plover.toml", "../throttle-bodies/alder-58.toml", "../shops/saltmarsh-fabrication.toml", "mm", "", "", "", "", "", "", "", "", "", "", "", "",
            "-430, 150, -150", "up", "to the bulkhead",
        ];
        var result = BracketGenProgram.Answer(answers, "begin", "job", file);
        Assert.Contains("Which way is up was left out", result.Output, StringComparison.Ordinal);
        Assert.Contains("Which way the bulkhead is was left out", result.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_there_is_kept_unless_the_user_says_otherwise()
    {
        using var place = new Workplace();
        var file = place.PathOf("profiles", "vehicles", "dunlin.toml");
        var before = File.ReadAllText(file);
        var refused = BracketGenProgram.Answer(Plover, "begin", "vehicle", file);
        Assert.Equal(ExitCode.BadInput, refused.ExitCode);
        Assert.Contains("--replace", refused.Errors, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(file));
        Assert.Equal(ExitCode.Pass, BracketGenProgram.Answer(Plover, "begin", "vehicle", file, "--replace").ExitCode);
        Assert.Contains("Plover", File.ReadAllText(file), StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_that_cannot_be_written_is_said()
    {
        using var place = new Workplace();
        File.WriteAllText(place.PathOf("blocked"), "");
        var result = BracketGenProgram.Answer(Plover, "begin", "vehicle", place.PathOf("blocked", "new.toml"));
        Assert.Equal(ExitCode.CannotWrite, result.ExitCode);
    }
}
