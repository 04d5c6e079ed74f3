using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Shops;
using BracketGen.TestSupport;
using BracketGen.Words.Profiles;

namespace BracketGen.Profiles.Tests;

/// <summary>One mistake each: exactly one error, at its file, line and key, that says what was read, what is allowed and what to do.</summary>
public class ErrorTests
{
    private const string StraightPunch = "[[punches]]\nname = \"s\"\nkind = \"straight\"\nangle = 30\ntip_radius = 1\nbody_width = 29.5\n";

    private const string OwnPunch = "[[punches]]\nname = \"o\"\nkind = \"own section\"\nheight = 100\nangle = 85\ntip_radius = 1\nbody = ";

    // file, what it has, what it is changed to, key of the error, parts of: read, allowed, advice
    public static TheoryData<string, string, string, string, string, string, string> Mistakes => new()
    {
        // unknown keys and typing errors
        { Samples.Body, "pitch_radius", "pitch_raduis", "quadrant.pitch_raduis", "pitch_raduis", "pitch_radius", "Did you mean pitch_radius?" },
        { Samples.Body, "hub_radius", "hub-radius", "quadrant.hub-radius", "hub-radius", "hub_radius", "Did you mean hub_radius?" },
        { Samples.Body, "groove_width = 3\n", "groove_width = 3\ncolour = \"red\"\n", "quadrant.colour", "colour", "groove_width", "There is no such key" },
        { Samples.Vehicle, "[pedal]", "[pedall]", "pedall", "pedall", "pedal", "Did you mean pedal?" },
        { Samples.Vehicle, "fleet_limit = 3  ", "fleet_limit.value = 3 \nfleet_limit.sharpness = 2 # ", "cable.fleet_limit", "fleet_limit", "an angle", "Give one number" },
        // keys that had another name
        { Samples.Vehicle, "min_bend_radius", "least_bend_radius", "cable.least_bend_radius", "the key least_bend_radius", "min_bend_radius", "least_bend_radius is now min_bend_radius" },
        { Samples.Job, "[document]", "over_travel_reserve = 1\n[document]", "preferences.over_travel_reserve", "over_travel_reserve", "min_over_travel", "over_travel_reserve is now min_over_travel" },
        { Samples.Job, "[document]", "max_give = 0.4\nmost_give = 1\n[document]", "preferences.most_give", "most_give", "max_give", "Delete one of the two" },
        { Samples.Body, "min = [42", "least = [42", "keep_out[2].least", "least", "min", "least is now min" },
        { Samples.Vehicle, "[cable]\n", "[cable]\nouter_stiffness = 100\n", "cable.outer_stiffness", "outer_stiffness", "outer_axial_stiffness", "100 N/mm times 450 mm is 45000 N" },
        // wrong units and wrong words
        { Samples.Body, "groove_width = 3\n", "groove_width = \"12 lbf\"\n", "quadrant.groove_width", "\"12 lbf\"", "a length from 0.5 to 20 mm", "lbf is a unit of force. Give a length in mm, cm, m, in or ft." },
        { Samples.Body, "bore = 58", "bore = \"58 mn\"", "bore", "\"58 mn\"", "a length", "did you mean mm?" },
        { Samples.Body, "bore = 58", "bore = \"58\"", "bore", "\"58\"", "a length", "Add a unit inside the quotes" },
        { Samples.Body, "bore = 58", "bore = \"58,2 mm\"", "bore", "\"58,2 mm\"", "a length", "decimal point" },
        { Samples.Body, "bore = 58", "bore = \"wide\"", "bore", "\"wide\"", "a length", "Give a length in mm" },
        { Samples.Body, "\"counter-clockwise\"", "\"anticlockwise\"", "opens", "anticlockwise", "\"counter-clockwise\" or \"clockwise\"", "Write one of these, in quotes." }, // a guess could be the other sense
        { Samples.Body, "thread = \"M6\"\nboss_diameter = 15\n\n[[mount.holes]]", "thread = \"M7\"\nboss_diameter = 15\n\n[[mount.holes]]", "mount.holes[1].thread", "\"M7\"", "\"M6\"", "Write diameter and pitch" },
        { Samples.Body, "thread = \"M6\"\nboss_diameter = 15\n\n[[mount.holes]]", "thread = \"M6x0.8\"\nboss_diameter = 15\n\n[[mount.holes]]", "mount.holes[1].thread", "\"M6x0.8\"", "\"M6\"", "M6x1. Lay a thread gauge" },
        { Samples.Body, "thread = \"M6\"\nboss_diameter = 15\n\n[[mount.holes]]", "thread = \"1/4-24\"\nboss_diameter = 15\n\n[[mount.holes]]", "mount.holes[1].thread", "\"1/4-24\"", "\"1/4-20 UNC\" or \"1/4-28 UNF\"", "1/4-20 UNC and 1/4-28 UNF" },
        { Samples.Body, "[mount]\n", "[mount]\nscrew_class = \"grade 5\"\n", "mount.screw_class", "\"grade 5\"", "\"5.8\" or \"8.8\"", "M6 has no such class" },
        { Samples.Vehicle, "\"M8x1\"", "\"M8x9\"", "cable.outer_end.thread", "\"M8x9\"", "\"M8x1\" or \"5/16-24\"", "Measure the thread again." },
        { Samples.Vehicle, "\"M8x1\"", "\"G1/8\"", "cable.outer_end.thread", "\"G1/8\"", "\"M8x1\" or \"5/16-24\"", "thread gauge" },
        { Samples.Vehicle, "\"threaded adjuster\"", "\"threaded adjustor\"", "cable.outer_end.kind", "adjustor", "\"threaded adjuster\"", "Did you mean \"threaded adjuster\"?" },
        // wrong kinds
        { Samples.Body, "bore = 58", "bore = [58]", "bore", "[58]", "a length", "Give one number" },
        { Samples.Body, "bore = 58", "bore = true", "bore", "true", "a length", "Give one number" },
        { Samples.Body, "bore = 58", "bore = 1979-05-27", "bore", "1979-05-27", "a length", "Give one number" },
        { Samples.Body, "bore = 58", "bore = { value = 58 }", "bore", "{ value = 58 }", "a length", "Give one number" },
        { Samples.Body, "name = \"Alder 58\"", "name = 58", "name", "58", "text in quotes", "Put the text in quotes." },
        { Samples.Body, "name = \"Alder 58\"", "name = \" \"", "name", "\" \"", "text in quotes", "between the quotes" },
        { Samples.Body, "normal = [0, 0, 1]", "normal = [0, 1]", "mount.normal", "[0, 1]", "[x, y, z]", "three numbers" },
        { Samples.Body, "normal = [0, 0, 1]", "normal = [0, 0, 0]", "mount.normal", "[0, 0, 0]", "not zero", "Give a direction" },
        { Samples.Body, "normal = [0, 0, 1]", "normal = [0, \"a\", 1]", "mount.normal[2]", "\"a\"", "a number", "without quotes" },
        { Samples.Vehicle, "lever_ratio = 3.4 ", "lever_ratio = \"3.4\" ", "pedal.lever_ratio", "\"3.4\"", "a number from 0.2 to 20", "without quotes" },
        { Samples.Job, "date = 2026-03-02", "date = \"2 March\"", "document.date", "\"2 March\"", "a date", "2026-03-31" },
        // impossible numbers
        { Samples.Body, "bore = 58", "bore = nan", "bore", "nan", "a length", "finite" },
        { Samples.Body, "bore = 58", "bore = -inf", "bore", "-inf", "a length", "finite" },
        { Samples.Body, "bore = 58", "bore = 1e300", "bore", "1e300", "from 10 to 200 mm", "a number without a unit is in mm" },
        { Samples.Body, "bore = 58", "bore = \"58 in\"", "bore", "\"58 in\"", "from 10 to 200 mm", "\"58 in\" is 1473.2 mm." },
        { Samples.Body, "bore = 58", "bore = \"1/0 in\"", "bore", "\"1/0 in\"", "a length", "finite" },
        { Samples.Body, "rotation = { value = 84", "rotation = { value = 184", "quadrant.rotation.value", "184", "an angle from 10 to 170°", "Check the number" },
        { Samples.Body, "pitch_radius = { value = 31.5, plus_minus = 0.2 }", "pitch_radius = -31.5", "quadrant.pitch_radius", "-31.5", "a length from 5 to 200 mm", "Check the number" },
        { Samples.Body, "31.5, plus_minus = 0.2 }", "31.5, plus_minus = -0.2 }", "quadrant.pitch_radius.plus_minus", "-0.2", "from 0 to 20 mm", "Check the number" },
        { Samples.Body, "31.5, plus_minus = 0.2 }", "7, plus_minus = 7 }", "quadrant.pitch_radius.plus_minus", "7", "less than the value, 7 mm", "Measure again" },
        { Samples.Body, "31.5, plus_minus = 0.2 }", "\"1.24 in\", plus_minus = 0.01 }", "quadrant.pitch_radius.plus_minus", "0.01", "with a unit", "\"0.01 in\"" },
        { Samples.Body, "31.5, plus_minus = 0.2 }", "31.5 }", "quadrant.pitch_radius.plus_minus", "nothing", "a length", "Add the line plus_minus" },
        { Samples.Body, "groove_extent = 150 ", "groove_extent = 350 ", "quadrant.groove_extent", "350", "from 10 to 330°", "Check" },
        { Samples.Body, "outer_radius = 34.5 ", "outer_radius = 30 ", "quadrant.outer_radius", "30", "at least pitch_radius, 31.5 mm", "Measure outer_radius and pitch_radius again" },
        { Samples.Body, "count = 2", "count = 2.5", "return_springs.count", "2.5", "a whole number from 1 to 6", "Write a whole number" },
        { Samples.Body, "count = 2", "count = 0", "return_springs.count", "0", "a whole number from 1 to 6", "Write a whole number" },
        { Samples.Body, "torque_closed = { value = 0.55", "torque_closed = { value = 550", "return_springs.torque_closed.value", "550", "from 0.01 to 50 N m", "without a unit is in N m" },
        { Samples.Body, "at = [-50, 12, -12]", "at = [-50, 12, -11.4]", "mount.holes[2].at", "[-50, 12, -11.4]", "within 0.05 mm", "The hole is 0.6 mm above the face" },
        { Samples.Body, "at = [-50, 12, -12]", "at = [-50, 12, -11.4]\nplus_minus = [0.3, 0.3, 0.3]", "mount.holes[2].at", "[-50, 12, -11.4]", "fits all holes best", "Its ± does not explain that" },
        { Samples.Body, "at = [-50, 12, -12]", "at = [-50, \"12 mm\", -12]\nplus_minus = [0, 0.3, 0]", "mount.holes[2].plus_minus", "[0, 0.3, 0]", "with a unit", "\"0.3 mm\"" },
        { Samples.Body, "at = [-50, 12, -12]", "at = [-50, -20, -12]", "mount.holes[2].at", "[-50, -20, -12]", "more than 6 mm from hole 1", "their centres are 2 mm apart" },
        { Samples.Body, "max = [85, -20, 15]", "max = [85, -70, 15]", "keep_out[2].max", "[85, -70, 15]", "beyond min", "Swap" },
        { Samples.Body, "to = [60, 0, -55]", "to = [-60, 0, -55]", "keep_out[1].to", "[-60, 0, -55]", "other than from", "two ends" },
        { Samples.Vehicle, "wire_diameter = 1.5", "wire_diameter = 5.5", "cable.outer_diameter", "5", "more than wire_diameter", "Measure" },
        { Samples.Vehicle, "across_flats = 13", "across_flats = 8", "cable.outer_end.across_flats", "8", "more than thread, 8 mm", "Measure" },
        { Samples.Shop, "k = 0.42", "k = 0.52", "test_bends[1].k", "0.52", "a number from 0 to 0.5", "it has no unit" },
        { Samples.Shop, "k = 0.42", "k = \"0.42\"", "test_bends[1].k", "\"0.42\"", "a number from 0 to 0.5", "without quotes" },
        { Samples.Shop, "inside_radius = 1.9", "inside_radius = 6.5", "dies[1].inside_radius", "6.5", "less than half the opening, 6 mm", "0.16" },
        { Samples.Shop, "material = \"DC01\"", "material = \"DC02\"", "test_bends[2].material", "\"DC02\"", "\"DC01\"", "Did you mean \"DC01\"?" },
        { Samples.Shop, "thicknesses = [3, 4, 5]", "thicknesses = [4, 5]", "test_bends[1].thickness", "3", "4 mm, 5 mm", "add it to the material's thicknesses" },
        { Samples.Shop, "thicknesses = [3, 4, 5]", "thicknesses = [3, 4, 5, \"3 mm\"]", "materials[1].thicknesses[4]", "\"3 mm\"", "once", "Delete one of the two." },
        { Samples.Shop, "thicknesses = [3, 4, 5]", "thicknesses = []", "materials[1].thicknesses", "0 items", "a list of 1 to 40", "Add" },
        { Samples.Shop, "inside_radius = 3.8\nk = 0.42", "inside_radius = 3.9\nk = 0.42", "test_bends[1].inside_radius", "3.9", "one of the dies or clamps", "give the die or clamp the radius" },
        { Samples.Shop, "min_radius_along_grain = 2\n", "min_radius_along_grain = 1\n", "materials[3].min_radius_along_grain", "1", "at least min_radius_across_grain", "Swap" },
        { Samples.Shop, "yield = 235", "yield = 235\nmax_tensile = 230", "materials[1].max_tensile", "230", "at least yield, 235 MPa", "yields before it breaks" },
        { Samples.Shop, "yield = 235", "yield = 235\nmin_tensile = 230", "materials[1].min_tensile", "230", "at least yield, 235 MPa", "yields before it breaks" },
        { Samples.Shop, "yield = 235", "yield = 235\nmin_tensile = 500\nmax_tensile = 400", "materials[1].min_tensile", "500", "at most max_tensile, 400 MPa", "" },
        { Samples.Body, "[mount]\n", "[mount]\nflatness = 3\n", "mount.flatness", "3", "a length from 0 to 2 mm", "" },
        { Samples.Body, "[mount]\n", "[mount]\nscrew_class = \"8.9\"\n", "mount.screw_class", "\"8.9\"", "\"8.8\"", "Did you mean" },
        { Samples.Body, "[mount]\n", "[mount]\nboss_material = \"cast aluminum\"\n", "mount.boss_material", "cast aluminum", "\"cast aluminium\"", "Did you mean \"cast aluminium\"?" },
        { Samples.Job, "[document]", "[life]\ntemperature = 900\n[document]", "life.temperature", "900", "a number from -40 to 500", "" },
        { Samples.Job, "[document]", "[life]\nopenings = 10\n[document]", "life.openings", "10", "a number from 1000 to", "" },
        { Samples.Shop, "inside_radius = 1.9", "inside_radius = 1.9\nbody_width = 12", "dies[1].body_width", "12", "more than opening, 12 mm", "Measure" },
        { Samples.Shop, "[[dies]]\nopening = 12", "[press]\nopen_height = 200\nstroke = 200\n[[dies]]\nopening = 12", "press.stroke", "200", "less than open_height, 200 mm", "Correct one" },
        { Samples.Shop, "[[dies]]\nopening = 12", StraightPunch + "height = 40\n[[dies]]\nopening = 12", "punches[1].height", "40", "more than the height of the wedge, 52.", "run apart" },
        { Samples.Shop, "[[dies]]\nopening = 12", OwnPunch + "[[8, 8], [8, 90], [-8, 90], [-8, 8]]\n[[dies]]\nopening = 12", "punches[1].body", "[[8, 8], [8, 90], [-8, 90], [-8, 8]]", "the highest 100 mm up", "List the corners" },
        { Samples.Shop, "[[dies]]\nopening = 12", OwnPunch + "[[-8, 8], [-8, 100], [8, 100], [8, 8]]\n[[dies]]\nopening = 12", "punches[1].body", "[[-8, 8], [-8, 100], [8, 100], [8, 8]]", "counter-clockwise", "the right flank" },
        { Samples.Job, "free_play = { value = 2,", "min_free_play = 3\nfree_play = { value = 2,", "preferences.min_free_play", "3", "at most free_play, 2 mm", "free_play is 2 mm" },
        { Samples.Job, "[document]", "max_thickness = 1.5\n[document]", "preferences.max_thickness", "1.5", "at least min_thickness, 2 mm", "its default" },
        { Samples.Job, "\"S235JR\", \"DC01\"", "\"S235JR\", \"DC10\"", "preferences.materials[2]", "\"DC10\"", "\"EN AW-5754 H22\"", "Did you mean \"DC01\"?" },
        // missing keys
        { Samples.Body, "bore = 58\n", "", "bore", "nothing", "a length from 10 to 200 mm", "Add the line bore = … : Diameter of the bore." },
        { Samples.Job, "title = \"Throttle cable bracket, Plover, Alder 58\"\n", "", "document.title", "nothing", "text in quotes", "Add the line title" },
        { Samples.Vehicle, "kind = \"barrel\" #", "#", "cable.fitting.kind", "nothing", "\"barrel\"", "Add the line kind" },
        { Samples.Vehicle, "profile = \"vehicle\"\n", "", "profile", "nothing", "profile = \"vehicle\"", "Begin the file" },
        // keys given twice
        { Samples.Body, "bore = 58", "bore = 58\nbore = 60", "bore", "bore again", "each key once", "It was given on line" },
        { Samples.Body, "[return_springs]", "[quadrant]\n[return_springs]", "quadrant", "quadrant again", "each key once", "It was given on line" },
        { Samples.Body, "[[mount.holes]]\nat = [-50, 12, -12]\nthread = \"M6\"\nboss_diameter = 15\n", "[mount.holes]\n", "mount.holes", "[mount.holes]", "[[mount.holes]]", "two brackets" },
        { Samples.Body, "[mount]\n", "[[keep_out]]\nname = \"pipe\"\nshape = \"tilted box\"\ncorner = [0, 0, 50]\nnext_1 = [10, 0, 50]\nnext_2 = [5, 10, 50]\nnext_3 = [0, 0, 60]\n\n[mount]\n", "keep_out[1].next_2", "", "square to each other", "joined to the first one by an edge" },
        { Samples.Body, "[mount]\n", "[[keep_out]]\nname = \"pipe\"\nshape = \"tilted box\"\ncorner = [0, 0, 50]\nnext_1 = [10, 0, 50]\nnext_2 = [0, 0, 50]\nnext_3 = [0, 0, 60]\n\n[mount]\n", "keep_out[1].next_2", "", "a corner away from the first one", "the other end of the edge" },
        // what is not TOML
        { Samples.Body, "bore = 58", "bore = 58 mm", "bore", "bore = 58 mm", "TOML", "Put a value with its unit in quotes: \"58 mm\"." },
        { Samples.Body, "bore = 58", "bore = 58,2", "bore", "bore = 58,2", "TOML", "decimal point" },
        { Samples.Body, "\"counter-clockwise\"", "counter-clockwise", "opens", "opens = counter-clockwise", "TOML", "Put words in quotes: \"counter-clockwise\"." },
        { Samples.Body, "name = \"Alder 58\"", "name = \"Alder 58", "name", "name = \"Alder 58", "TOML", "quotes are closed" },
        { Samples.Body, "bore = 58", "bore =", "bore", "bore =", "TOML", "value" },
        { Samples.Body, "bore = 58", "bore = 058", "bore", "bore = 058", "TOML", "" },
        { Samples.Body, "bore = 58", "bore = 99999999999999999999999", "bore", "bore = 9999", "TOML", "" },
        // files
        { Samples.Job, "../vehicles/plover.toml", "../vehicles/plofer.toml", "vehicle", "no such file at vehicles/plofer.toml", "a file that exists", "spelling" },
        { Samples.Job, "../vehicles/plover.toml", "/vehicles/plover.toml", "vehicle", "/vehicles/plover.toml", "a path from this file's folder", "as seen from this file's folder" },
        { Samples.Job, "../vehicles/plover.toml", "C:/plover.toml", "vehicle", "C:/plover.toml", "a path from this file's folder", "as seen from this file's folder" },
        { Samples.Job, "\"../vehicles/plover.toml\"", "'..\\vehicles\\plover.toml'", "vehicle", "plover.toml", "forward slashes", "forward slashes" },
        { Samples.Job, "\"../vehicles/plover.toml\"", "7", "vehicle", "7", "a path", "in quotes" },
    };

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void OneMistakeIsOneError(string file, string old, string changed, string key, string read, string allowed, string advice)
    {
        var result = Samples.ReadWith(file, old, changed);
        Assert.Null(result.Value);
        Assert.True(result.Errors.Length == 1, string.Join('\n', result.Errors.Select(ProfileErrorText.Format)));
        var error = result.Errors[0];
        Assert.Equal(file, error.File);
        Assert.Equal(key, error.Key);
        Assert.Contains(read, ProfileErrorText.Read(error));
        Assert.Contains(allowed, ProfileErrorText.Allowed(error));
        Assert.Contains(advice, ProfileErrorText.Advice(error));
        Assert.Matches("[.?]$", ProfileErrorText.Advice(error));
    }

    // file, what it has, what it is changed to, line after where that begins (0: the same line), column
    [Theory]
    [InlineData(Samples.Body, "bore = 58", "bore = \"58 lbf\"", 0, 8)] // the value
    [InlineData(Samples.Body, "bore = 58", "boer = 58", 0, 1)] // an unknown key: the key
    [InlineData(Samples.Body, "bore = 58", "bore = 58\nbore = 58", 1, 1)] // the second of two
    [InlineData(Samples.Body, "bore = 58", "  bore = 58 mm", 0, 13)] // where the parser stops
    [InlineData(Samples.Body, "[quadrant]\n", "[quadrant]\n#", 0, 2)] // a missing key: the header
    [InlineData(Samples.Body, "radius = { value = 31.5, plus_minus = 0.2 }", "radius = { value = 31.5, plus_minus = 32 }", 0, 45)] // the value in the braces
    [InlineData(Samples.Body, "normal = [0, 0, 1]", "normal = [0, 0, true]", 0, 17)] // the item of the list
    [InlineData(Samples.Body, "name = \"Alder 58\"", "name = 'é😀' + 1", 0, 13)] // counted in characters
    [InlineData(Samples.Body, "name = \"Alder 58\"", "name = 'é😀😀'\ncolour = 1", 1, 1)]
    [InlineData(Samples.Vehicle, "\"barrel\"", "\"barel\"", 0, 8)]
    [InlineData(Samples.Shop, "k = 0.42", "k = 42", 0, 5)]
    [InlineData(Samples.Job, "\"DC01\"", "\n  \"DC99\"", 1, 3)]
    public void AnErrorStandsWhereTheMistakeIs(string file, string old, string changed, int lines, int column)
    {
        var error = Assert.Single(Samples.ReadWith(file, old, changed).Errors);
        Assert.Equal(file, error.File);
        Assert.Equal((Samples.LineOf(file, old) + lines, column), (error.Line, error.Column));
    }

    // In a job in inches the limits are in inches, whatever the file is written in.
    [Theory]
    [InlineData(Samples.Body, "groove_width = 3\n", "groove_width = 33\n", "a length from 0.0197 to 0.7874 in", "33 is 1.2992 in.")]
    [InlineData(Samples.Body, "bore = 58", "bore = \"580 mm\"", "a length from 0.3938 to 7.874 in", "\"580 mm\" is 22.8346 in.")]
    [InlineData(Samples.Body, "outer_radius = 34.5 ", "outer_radius = 30 ", "at least pitch_radius, 1.2402 in", "one contains the other")]
    [InlineData(Samples.Body, "torque_closed = { value = 0.55", "torque_closed = { value = 550", "a torque from 0.0886 to 442.5372 lbf in", "550 is 4867.9")]
    [InlineData(Samples.Body, "at = [-50, 12, -12]", "at = [-50, 12, -11.4]", "within 0.002 in", "0.0236 in above the face")]
    [InlineData(Samples.Vehicle, "\"M8x1\"", "\"M8x9\"", "diameter 0.1181 to 1.1811 in", "Measure the thread")]
    [InlineData(Samples.Shop, "thicknesses = [3, 4, 5]", "thicknesses = [4, 5]", "0.1575 in, 0.1969 in", "add it")]
    public void AJobInInchesHasItsLimitsInInches(string file, string old, string changed, string allowed, string advice)
    {
        var job = Samples.Texts[Samples.Job].Replace("units = \"mm\"", "units = \"in\"");
        var error = Assert.Single(Samples.ReadJob(Samples.Edit(Samples.Files.With(Samples.Job, job), file, Samples.Texts[file], old, changed)).Errors);
        Assert.Contains(allowed, ProfileErrorText.Allowed(error));
        Assert.Contains(advice, ProfileErrorText.Advice(error));
        Assert.DoesNotMatch("[0-9] (mm|N|N m|MPa|g)\\b", ProfileErrorText.Allowed(error) + ProfileErrorText.Advice(error).Replace("\"580 mm\"", ""));
    }
}
