using System.Text;
using BracketGen.TestSupport;

namespace BracketGen.Cli.Tests;

/// <summary>The console of this process, each run of the program with an input and outputs of its own, several at once.</summary>
internal static class CaughtConsole
{
    private static readonly AsyncLocal<Streams?> Now = new();

    static CaughtConsole()
    {
        Console.SetIn(new Reader(Console.In));
        Console.SetOut(new Writer(Console.Out, s => s.Output));
        Console.SetError(new Writer(Console.Error, s => s.Errors));
    }

    /// <summary>What <paramref name="run"/> returns and prints, with <paramref name="input"/> typed.</summary>
    public static ToolResult Of(Func<int> run, string input)
    {
        var streams = new Streams(new StringReader(input), new(), new());

        // On a thread of the pool, as the program's own main thread waits for nothing else.
        var exitCode = Task.Run(() =>
        {
            Now.Value = streams;
            return run();
        }).GetAwaiter().GetResult();
        return new(exitCode, streams.Output.ToString(), streams.Errors.ToString());
    }

    private sealed record Streams(StringReader Input, StringWriter Output, StringWriter Errors);

    private sealed class Reader(TextReader usual) : TextReader
    {
        private TextReader Here => Now.Value?.Input ?? usual;

        public override int Peek() => Here.Peek();

        public override int Read() => Here.Read();

        public override int Read(char[] buffer, int index, int count) => Here.Read(buffer, index, count);

        public override string? ReadLine() => Here.ReadLine();
    }

    private sealed class Writer(TextWriter usual, Func<Streams, TextWriter> mine) : TextWriter
    {
        public override Encoding Encoding => usual.Encoding;

        private TextWriter Here => Now.Value is { } streams ? mine(streams) : usual;

        public override void Write(char value) => Here.Write(value);

        public override void Write(char[] buffer, int index, int count) => Here.Write(buffer, index, count);

        public override void Write(string? value) => Here.Write(value);

        public override void Flush() => Here.Flush();
    }
}
