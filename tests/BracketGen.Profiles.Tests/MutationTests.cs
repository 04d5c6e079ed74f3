using System.Text;
using BracketGen.Profiles.Family;
using BracketGen.Words.Profiles;
using BracketGen.Words.Report;
using CsCheck;

namespace BracketGen.Profiles.Tests;

/// <summary>Damaged files give errors with a place in the file, and never an exception.</summary>
public class MutationTests
{
    private static readonly string[] Scraps =
    [
        "\"", "'", "'''", "[", "]", "[[", "{", "}", "=", ",", ".", "#", "\n", "\r", "\0", "\uFEFF", "é", "nan", "-inf", "1e999", "0x", "1979-05-27T07:32:00Z",
        "\\u00", "plus_minus", "value = 1", "[mount]", "[[keep_out]]", "a.b.c = 1", "true", "-", "12 lbf", "9999999999999999999",
    ];

    private static Gen<string> Pick(string[] items) => Gen.Int[0, items.Length - 1].Select(i => items[i]);

    [Fact]
    public void DamagedFilesNeverThrow()
    {
        var gen = Gen.Select(
            Pick([.. Samples.Texts.Keys]),
            Gen.Select(Gen.Int[0, 3], Gen.Int[0, 100_000], Gen.Int[1, 40], Pick([.. Scraps])).Array[1, 4]);
        gen.Sample(
            (file, hurts) =>
            {
                var bytes = Encoding.UTF8.GetBytes(Samples.Texts[file]).ToList();
                foreach (var (how, where, length, scrap) in hurts)
                {
                    var at = where % bytes.Count;
                    if (how is 0 or 1)
                    {
                        bytes.RemoveRange(at, Math.Min(length, bytes.Count - at - 1));
                    }

                    if (how is 1 or 2)
                    {
                        bytes.InsertRange(at, Encoding.UTF8.GetBytes(scrap));
                    }

                    if (how is 3)
                    {
                        bytes[at] = (byte)(bytes[at] ^ (1 << (length % 8)));
                    }
                }

                var files = Samples.Files.With(file, bytes.ToArray());
                foreach (var job in Samples.Texts.Keys.Where(k => k.StartsWith("jobs", StringComparison.Ordinal)).Where(j => file == j || Samples.Texts[j].Contains("/" + file, StringComparison.Ordinal)).Take(2))
                {
                    var result = ProfileReader.ReadJob(job, files);
                    if (result.IsRead == !result.Errors.IsEmpty || result.Errors.Any(e => e.Line < 1 || e.Column < 1 || ProfileErrorText.Read(e).Length == 0 || ProfileErrorText.Allowed(e).Length == 0 || ProfileErrorText.Advice(e).Length == 0))
                    {
                        return false;
                    }
                }

                return true;
            },
            seed: "0003Y5tbF4C6",
            iter: 300,
            threads: 1);
    }
}
