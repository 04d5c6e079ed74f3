namespace BracketGen.Storage.Tests;

/// <summary>One at a time holds a folder.</summary>
public sealed class FolderLockTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_held_folder_is_not_given_out_again()
    {
        using (FolderLock.TryTake(_folder.Root))
        {
            Assert.Null(FolderLock.TryTake(_folder.Root));
            using var other = FolderLock.TryTake(_folder.PathOf("below"));
            Assert.NotNull(other);
        }

        using var again = FolderLock.TryTake(_folder.Root);
        Assert.NotNull(again);
    }

    [Fact]
    public void The_file_stays_and_is_empty()
    {
        FolderLock.Take(_folder.Root).Dispose();
        Assert.Equal(0, new FileInfo(_folder.PathOf(FolderLock.FileName)).Length);
    }

    [Fact]
    public void Writers_take_turns()
    {
        var inside = 0;
        Parallel.For(0, 40, new ParallelOptions { MaxDegreeOfParallelism = 8 }, i =>
        {
            var bytes = Enumerable.Repeat((byte)i, 5000).ToArray();
            using (FolderLock.Take(_folder.Root))
            {
                Assert.Equal(1, Interlocked.Increment(ref inside));
                foreach (var name in new[] { "a", "b" })
                {
                    File.WriteAllBytes(_folder.PathOf(name), bytes);
                }

                Assert.Equal(bytes, File.ReadAllBytes(_folder.PathOf("a")));
                Interlocked.Decrement(ref inside);
            }
        });
        Assert.Equal(File.ReadAllBytes(_folder.PathOf("a")), File.ReadAllBytes(_folder.PathOf("b")));
    }

    [Theory]
    [InlineData("", true)]
    [InlineData("below/deep", true)]
    [InlineData("..", false)]
    [InlineData("../beside", false)]
    [InlineData("..hidden", true)]
    public void It_covers_its_folder_and_those_below(string path, bool covers)
    {
        using var held = FolderLock.Take(_folder.PathOf("locked"));
        Assert.Equal(covers, held.Covers(Path.Combine(held.Folder, path)));
    }

    [Fact]
    public void A_folder_that_cannot_be_made_is_an_error_and_not_a_wait()
    {
        File.WriteAllText(_folder.PathOf("file"), "");
        Assert.ThrowsAny<IOException>(() => FolderLock.TryTake(_folder.PathOf("file/below")));
    }
}
