using System.Text;
using BracketGen.TestSupport;
using CsCheck;

namespace BracketGen.Storage.Tests;

/// <summary>A set of files is written all or none; what was there survives when it cannot be written.</summary>
public sealed class WholeFilesTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void New_files_are_written_and_outdated_ones_removed()
    {
        WholeFiles.Write(_folder.Root, [("a", [1]), ("deep/er/b", [2])], ["c", "not/there"]);
        Assert.Equal(["a", "deep/er/b"], _folder.Texts().Keys);
        WholeFiles.Write(_folder.Root, [("a", [3])], ["deep/er/b", "c"]);
        Assert.Equal(["a"], _folder.Texts().Keys);
        Assert.Equal([3], File.ReadAllBytes(_folder.PathOf("a")));
    }

    [Fact]
    public void One_file_is_written_without_a_lock()
    {
        WholeFiles.WriteOne(_folder.PathOf("deep/a"), [1]);
        WholeFiles.WriteOne(_folder.PathOf("deep/a"), [2]);
        Assert.Equal([_folder.PathOf("deep/a")], Directory.GetFiles(_folder.Root, "*", SearchOption.AllDirectories));
        Assert.Equal([2], File.ReadAllBytes(_folder.PathOf("deep/a")));
    }

    [SkippableFact]
    public void On_a_full_disk_the_old_files_stay_and_nothing_is_left_over()
    {
        Skip.IfNot(File.Exists("/dev/full"), "This system has no device that is always full.");
        _folder.Fill("a", "b", "gone");
        var before = _folder.Texts();

        // The place where the second file waits is on the full device.
        File.CreateSymbolicLink(_folder.PathOf($".b.{Environment.ProcessId}.part"), "/dev/full");
        Assert.Throws<IOException>(() => WholeFiles.Write(_folder.Root, [("a", [1]), ("b", [2])], ["gone"]));
        Assert.Equal(before, _folder.Texts());
    }

    [Fact]
    public void If_a_later_file_cannot_be_renamed_the_earlier_ones_are_put_back()
    {
        _folder.Fill("a", "gone");
        var before = _folder.Texts();

        // The same name twice: the second time there is nothing left to rename, as if another program had taken it.
        Assert.ThrowsAny<IOException>(() => WholeFiles.Write(_folder.Root, [("new", [1]), ("a", [2]), ("a", [3])], ["gone"]));
        Assert.Equal(before, _folder.Texts());
    }

    // Any set over any folder, with one place blocked by a folder or not: afterwards the folder holds all of the set or is as it was.
    [Fact]
    public void All_of_a_set_is_written_or_none() =>
        Gen.Select(Names, Names, Names, Gen.Bool, Gen.Int[0, 5]).Check(
            60,
            set =>
            {
                var (there, write, remove, isBlocked, at) = set;
                using var folder = new TestFolder();
                folder.Fill([.. there]);
                var blocked = isBlocked ? write[at % write.Length] : null;
                if (blocked is not null)
                {
                    File.Delete(folder.PathOf(blocked));
                    Directory.CreateDirectory(folder.PathOf(blocked));
                }

                var expected = folder.Texts();
                (string, byte[])[] files = [.. write.Select(n => (n, Encoding.UTF8.GetBytes("new " + n)))];
                if (blocked is not null)
                {
                    Assert.ThrowsAny<IOException>(() => WholeFiles.Write(folder.Root, files, [.. remove]));
                }
                else
                {
                    WholeFiles.Write(folder.Root, files, [.. remove]);
                    remove.ToList().ForEach(n => expected.Remove(n));
                    write.ToList().ForEach(n => expected[n] = "new " + n);
                }

                Assert.Equal(expected, folder.Texts());
            });

    // First gone, last back: whoever finds it finds the rest of its set.
    [Fact]
    public void A_file_of_the_set_may_be_outdated_too()
    {
        _folder.Fill("mark", "a");
        WholeFiles.Write(_folder.Root, [("a", [1]), ("mark", [2])], ["mark"]);
        Assert.Equal([1], File.ReadAllBytes(_folder.PathOf("a")));
        Assert.Equal([2], File.ReadAllBytes(_folder.PathOf("mark")));
    }

    [Fact]
    public void What_a_killed_run_left_half_written_is_removed_and_nothing_else()
    {
        foreach (var name in new[] { ".a.1.part", ".a.1.old", ".b.77.part", ".a.notes", "a.part" })
        {
            File.WriteAllText(_folder.PathOf(name), "left");
        }

        WholeFiles.Write(_folder.Root, [("a", [1])], []);
        Assert.Equal([".a.notes", ".b.77.part", "a", "a.part"], _folder.Texts().Keys);
    }

    [Fact]
    public void The_lock_of_a_folder_is_good_for_those_below_it_only()
    {
        using var held = FolderLock.Take(_folder.PathOf("line"));
        WholeFiles.Write(held, _folder.PathOf("line/sheets"), [("a", [1])], []);
        Assert.Throws<ArgumentException>(() => WholeFiles.Write(held, _folder.PathOf("line2"), [("a", [1])], []));
        Assert.Throws<ArgumentException>(() => WholeFiles.Write(held, _folder.Root, [("a", [1])], []));
        Assert.Equal(["line/sheets/a"], _folder.Texts().Keys);
    }

    private static readonly Gen<string[]> Names =
        Gen.Shuffle(new[] { "a", "b", "c", "d/e", "d/f", "g" }).SelectMany(all => Gen.Int[1, 6].Select(n => all[..n]));
}
