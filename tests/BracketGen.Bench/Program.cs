using BenchmarkDotNet.Running;
using BracketGen.Bench;

// dotnet run -c Release --project tests/BracketGen.Bench -- COMMAND
//   main-job [PROGRAM]     the published program from command to files, whole processes; publishes it unless given its path
//   line [COUNT]           a product line of 2,000 variants (or COUNT) solved, registered and shared; how time and memory grow
//   search                 one job's search and its growth with candidates
//   strength-tables        convergence tables and growth of docs/strength.md, to standard output
//   strength-growth        only the growth with nodes
//   strength-deck FILE     the L-bracket as a CalculiX deck
//   --filter '*'           BenchmarkDotNet
switch (args)
{
    case ["main-job"]:
        return MainJob.Run(Console.Out, null);
    case ["main-job", var program]:
        return MainJob.Run(Console.Out, Path.GetFullPath(program));
    case ["line"]:
        return LineBenchmark.Run(Console.Out, 2000);
    case ["line", var count] when int.TryParse(count, out var variants) && variants is > 0 and <= 100_000:
        return LineBenchmark.Run(Console.Out, variants);
    case ["search"]:
        SearchTables.Write(Console.Out);
        break;
    case ["strength-tables"]:
        StrengthTables.Write(Console.Out);
        break;
    case ["strength-growth"]:
        StrengthTables.WriteGrowth(Console.Out);
        break;
    case ["strength-deck", var file]:
        StrengthTables.WriteDeck(file);
        break;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(StrengthBenchmarks).Assembly).Run(args);
        break;
}

return 0;
