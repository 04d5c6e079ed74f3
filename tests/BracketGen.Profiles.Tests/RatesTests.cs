using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Profiles.Tests;

/// <summary>What work and sheet cost: the shop's rates, and a family's over them.</summary>
public class RatesTests
{
    private const string Family =
        """
        profile = "family"
        name = "Creek line"
        shop = "shops/saltmarsh-fabrication.toml"

        [[vehicles]]
        code = "PLV"
        file = "vehicles/plover.toml"

        [[throttle_bodies]]
        code = "A58"
        file = "throttle-bodies/alder-58.toml"

        [numbers]
        rule = "CL-{serial}"

        """;

    [Fact]
    public void A_shop_without_rates_counts_minutes() =>
        Assert.Equal(ShopRates.InMinutes, Samples.ReadJob(With("")).Value!.Shop.Rates);

    [Fact]
    public void What_a_shop_leaves_out_is_as_usual()
    {
        var rates = Samples.ReadJob(With("[rates]\ncurrency = \"SEK\"\ncutting_rate = 900\nbatch = 5\n")).Value!.Shop.Rates;
        Assert.Equal(new ShopRates { Currency = "SEK", CuttingRate = 900, Batch = 5 }, rates);
    }

    [Fact]
    public void A_price_without_rates_is_an_error()
    {
        var text = Samples.Texts[Samples.Shop].Replace("designation = \"DC01\"\n", "designation = \"DC01\"\nprice_per_kilogram = 1.4\n");
        var result = Samples.ReadJob(Samples.Files.With(Samples.Shop, text));
        Assert.Equal(new Contradiction(Contradictory.PriceWithoutRates), Assert.Single(result.Errors).Problem);
        var priced = Samples.ReadJob(Samples.Files.With(Samples.Shop, Put(text, "[rates]\ncurrency = \"EUR\"\n"))).Value!.Shop;
        Assert.Equal(1.4, priced.Rates.PerKilogram(priced.Stock.First(s => s.Material.Designation == "DC01").Material));
        Assert.Equal(2.5, priced.Rates.PerKilogram(priced.Stock.First(s => s.Material.Designation != "DC01").Material));
    }

    [Fact]
    public void A_family_takes_from_the_shop_what_it_leaves_out()
    {
        var shop = "[rates]\ncurrency = \"EUR\"\ncutting_rate = 95\nbend_time = 40\n";
        var rates = Rates(shop, "[rates]\nbending_rate = 66\nmark_up = 0.5\n");
        Assert.Equal(new ShopRates { CuttingRate = 95, BendTime = 40, BendingRate = 66 }, rates.Work);
        Assert.Equal(0.5, rates.MarkUp);

        // No rates of its own; no rates at all; another currency, in which the shop's prices are no prices.
        Assert.Equal(95, Rates(shop, "").Work.CuttingRate);
        Assert.Equal(new(), Rates("", "").Work);
        Assert.Equal(new ShopRates { Currency = "SEK", BendTime = 40 }, Rates(shop, "[rates]\ncurrency = \"SEK\"\n").Work);
        Assert.Equal(new ShopRates { BendTime = 25, CuttingRate = 80 }, Rates("", "[rates]\ncutting_rate = 80\n").Work);
    }

    private static Profiles.Family.Rates Rates(string shop, string family) =>
        FamilyReader.Read("family.toml", With(shop).With("family.toml", Family + family)).Value!.Family.Rates;

    private static MemoryFileSource With(string rates) => Samples.Files.With(Samples.Shop, Put(Samples.Texts[Samples.Shop], rates));

    private static string Put(string text, string rates) => text.TrimEnd() + "\n\n" + rates;
}
