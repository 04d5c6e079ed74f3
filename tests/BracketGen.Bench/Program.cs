using BenchmarkDotNet.Running;
using BracketGen.Bench;

// dotnet run -c Release --project tests/BracketGen.Bench -- COMMAND
//   strength-tables        convergence tables and growth of docs/strength.md, to standard output
//   strength-growth        only the growth with nodes
//   strength-deck FILE     the L-bracket as a CalculiX deck
//   --filter '*'           BenchmarkDotNet
switch (args)
{
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
