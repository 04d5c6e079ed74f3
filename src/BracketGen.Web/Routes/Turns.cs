namespace BracketGen.Web.Routes;

/// <summary>A small machine solves two jobs at once well; the others wait.</summary>
internal sealed class Turns
{
    private readonly SemaphoreSlim _free = new(2);

    /// <summary>What <paramref name="work"/> gives, as soon as its turn has come.</summary>
    public async Task<T> Take<T>(Func<T> work, CancellationToken cancelled)
    {
        await _free.WaitAsync(cancelled);
        try
        {
            return await Task.Run(work, cancelled);
        }
        finally
        {
            _free.Release();
        }
    }
}
