using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Family;
using BracketGen.SheetMetal.Standards;
using BracketGen.Units;
using BracketGen.Words.Profiles;
using BracketGen.Words.Report;

namespace BracketGen.Profiles.Tests;

/// <summary>Every problem there is has its sentences, in both unit systems.</summary>
public class WordsTests
{
    private static readonly AllowedQuantity Length = new(UnitTable.Millimetre, 1, 30);

    private static IEnumerable<ProfileProblem> All =>
    [
        .. Enum.GetValues<ValueMistake>().Select(m => new ValueWrong(m, m == ValueMistake.NotThePattern ? new AllowedPattern(TextPattern.Code) : Length)),
        .. Enum.GetValues<TextPattern>().Select(p => new ValueWrong(ValueMistake.NotThePattern, new AllowedPattern(p))),
        .. new AllowedValue[]
        {
            new AllowedCount(1, 6), new AllowedLine(40), new AllowedWords(["a", "b"]), new AllowedList(1, 4, Length), new AllowedVector(false, Length),
            new AllowedVector(true, new(UnitTable.One, -1, 1)), new AllowedTable(["a", "b"]), new AllowedKinds("kind", ["a", "b"]), new AllowedFlangePoint(true, Length), new AllowedFlangePoint(false, Length),
        }.Select(a => new ValueWrong(ValueMistake.NotATable, a)),
        new WordUnknown(new(["a", "b"]), null), new WordUnknown(new(["a", "b"]), "a"), new OutOfRange(Length, 50, null), new OutOfRange(Length, 50, UnitTable.InchLength),
        new OutOfRange(new(UnitTable.One, 0, 1), 2, null), new UnitUnknown(Length, "mn", "mm"), new UnitUnknown(Length, "xyz", null), new UnitWrong(Length, UnitTable.Newton),
        new PlusMinusWithoutUnit("0.01", "in"), new KeyMissing("a", Length, "Something.", true), new KeyMissing("a", Length, "Something.", false),
        new KeyUnknown("a", ["b"], null), new KeyUnknown("a", ["b"], "b"), new KeyRenamed("a", "b", true), new KeyRenamed("a", "b", false), new KeyReplaced("a", "b"), new KeyOfOtherCable("a", "b"), new SecondCable(1), new SecondCable(2),
        new AlternativeMissing(["a", "b"]), new AlternativeTwice(["a", "b"]), new KeyTwice(3), new HeaderOfOneBracket(3), new MoreMistakes(1), new MoreMistakes(5),
        .. Enum.GetValues<FileMistake>().SelectMany(m => new[] { new FileUnread(m, null), new FileUnread(m, "a.toml") }),
        new KindMissing("job"), new KindWrong("job", "shop"), new KindWrong("job", null),
        .. Enum.GetValues<SyntaxMistake>().Select(m => new NotToml(m, "x.")),
        .. Enum.GetValues<Relation>().SelectMany(r => Enum.GetValues<CompareReason>().Select(c => new Compared(r, "b", Quantity.Length, 2, c))),
        new WrongOrder("a", 2, "b", 1, Quantity.Length, true, false, true), new WrongOrder("a", 2, "b", 1, Quantity.Voltage, false, true, false),
        .. Enum.GetValues<Repeated>().Select(r => new GivenTwice(r)),
        .. Enum.GetValues<NamedThing>().SelectMany(n => new[] { new NameUnknown([], null, n), new NameUnknown(["a"], "a", n, "Saltmarsh Fabrication"), new NameUnknown(["a"], null, n, "Saltmarsh Fabrication") }),
        .. Enum.GetValues<ShopLength>().Select(l => new LengthUnknown([1, 2], l)),
        new HoleOffFace(-1, 0.05, new(1, 2, 3)), new HolesOverlap(1, 6, 2), new GrooveOutsideRim(30), new GrooveNotConvex("Not convex."), new PedalTableWrong("Not rising."), new PunchBodyWrong(100),
        new PedalTableShort(50), new SpringsDoNotAddUp(700, 400, 900), new NumbersAlike(["{vehicle}"]), .. Enum.GetValues<Contradictory>().Select(c => new Contradiction(c)),
        .. Enum.GetValues<ShapeFault>().Select(f => new BracketShapeWrong(new(f, 0, 1, 5, 7))),
        .. Enum.GetValues<DxfMistake>().SelectMany(m => new[] { new DxfWrong(m, "CUT", 1), new DxfWrong(m, "", 2) }), .. Enum.GetValues<DrawnFault>().Select(f => new DrawnWrong(f)),
        .. Enum.GetValues<OffcutMistake>().SelectMany(m => new[] { new OffcutWrong(m, "CUT", 12.3, 8), new OffcutWrong(m) }),
        .. Enum.GetValues<RingMistake>().SelectMany(m => new[] { new RingWrong(m, "F1", 12.3, 8, "H2"), new RingWrong(m, "H1", 3, 8, "F2") }),
        .. Enum.GetValues<SecondFaceMistake>().SelectMany(m => new[] { new SecondFaceWrong(m, Angle.Right, 1, true, 12, 8), new SecondFaceWrong(m, Angle.Right, 2, false, 3, 8) }),
        new ThreadUnknown([.. FastenerThread.All], false), new ThreadUnknown([FastenerThread.All[2]], true), new SheetUnknown(["DC01"], null, ["yield"]), new SheetUnknown(["DC01"], "DC01", ["yield"]), new SpacerUnderAll(), new SlotSquareToFace(new(0, 0, 1), null), new SlotSquareToFace(new(0, 0, 1), "A58"), new SlotsOnTwoFaces(null), new SlotsOnTwoFaces("A58"), new KindNeedsKey("stud", "stands_out", "How far."), new KeyOfOtherKind("stud", "hole_diameter", "through"), new HoleNotForBolt("M6", 6, 7), new ClassNotForThread("1/4-20 UNC", ["grade 2"], "grade 5"),
    ];

    [Theory]
    [InlineData(UnitSystem.Metric, "[0-9] ?(in|lbf|ksi|lb)\\b")]
    [InlineData(UnitSystem.Inch, "[0-9] ?(mm|N|MPa|g)\\b")]
    public void EveryProblemHasItsWords(UnitSystem units, string otherUnits)
    {
        foreach (var problem in All)
        {
            var error = new ProfileError("a.toml", 3, 5, "table.key", "x", problem) { Units = units };
            Assert.NotEmpty(ProfileErrorText.Read(error));
            Assert.NotEmpty(ProfileErrorText.Allowed(error));
            Assert.Matches("[.?]$", ProfileErrorText.Advice(error));
            var text = ProfileErrorText.Format(error);
            Assert.DoesNotMatch("[«»]|\\b(least|most) [a-z]+_|known here|is told|leave away", text);
            if (problem is not PlusMinusWithoutUnit and not ValueWrong { Mistake: ValueMistake.NoNumber })
            {
                Assert.DoesNotMatch(otherUnits, text);
            }
        }
    }

    [Fact]
    public void EveryKindOfProblemIsAmongThem()
    {
        var kinds = typeof(ProfileProblem).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(ProfileProblem))).ToHashSet();
        Assert.Equal(kinds, All.Select(p => p.GetType()).ToHashSet());
        var forms = typeof(AllowedValue).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(AllowedValue))).Select(t => t.Name);
        Assert.Equal(10, forms.Count());
    }
}
