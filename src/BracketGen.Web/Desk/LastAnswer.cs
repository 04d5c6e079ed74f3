namespace BracketGen.Web.Desk;

/// <summary>Keeps what was worked out last: the page asks for several things of one answer, one after another.</summary>
/// <remarks>Thread-safe. Two that ask at once for something new may both work it out.</remarks>
/// <typeparam name="TAsked">What is asked about.</typeparam>
/// <typeparam name="TAnswer">What is answered.</typeparam>
/// <param name="isSame">Whether two questions have the same answer.</param>
internal sealed class LastAnswer<TAsked, TAnswer>(Func<TAsked, TAsked, bool> isSame)
{
    private volatile Known? _last;

    /// <summary>The answer, worked out where it is not known.</summary>
    /// <param name="asked">What is asked about.</param>
    /// <param name="work">Works it out.</param>
    public TAnswer To(TAsked asked, Func<TAnswer> work)
    {
        if (_last is { } last && isSame(last.Asked, asked))
        {
            return last.Answer;
        }

        var answer = work();
        _last = new(asked, answer);
        return answer;
    }

    private sealed record Known(TAsked Asked, TAnswer Answer);
}
