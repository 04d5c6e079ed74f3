using BracketGen.Fuzz.Tests;
using BracketGen.Strength.Tests;
using BenchmarkDotNet.Running;
using BracketGen.Bench;
using BracketGen.Bench.Same;
using BracketGen.Bench.Solids;

// dotnet run -c Release --project tests/BracketGen.Bench -- COMMAND
//   main-job [PROGRAM]     the published program from command to files, whole processes; publishes it unless given its path
//   beside [PROGRAM]       the same work by this program and by others: ezdxf, Open CASCADE, CalculiX, an empty native program
//   same BEFORE AFTER [--jobs 200] [--strength 200] [--seed 1] [--keep FOLDER]
//                          every number of result, cut files and solid model by two programs, on the shipped jobs and on random ones;
//                          --strength: how many of the random ones are also made with strength, the slow part;
//                          --keep keeps inputs and outputs there, and a second run uses what BEFORE made again
//   ratio BEFORE AFTER [--runs 15]
//                          wall and processor time of two programs, run in turn
//   line [COUNT]           a product line of 2,000 variants (or COUNT) solved, registered and shared; how time and memory grow
//   nest-sets FOLDER       published sets of irregular pieces (*.xml in the form of ESICUP) nested on strips
//   fuzz COUNT [STREAM [WHOLE [FROM]]]
//                          COUNT hostile inputs; of those that are taken every WHOLEth (16th) goes through the whole program
//   fuzz-case STREAM NUMBER FILE
//                          writes one of them, to look at it and cut it down
//   search                 one job's search and its growth with candidates
//   strength-tables        convergence tables and growth of docs/strength.md, to standard output
//   strength-growth        only the growth with nodes
//   strength-pool          every candidate of the shipped jobs judged by stages and each in full
//   study                  one study of strength, stage by stage, on one core
//   solids FOLDER [EDGE [FIRST]]
//                          twelve brackets, or those from number FIRST on, as shells and, by Gmsh and CalculiX, as solids of edge length
//                          EDGE (1.5) times the thickness; their files stay in FOLDER
//   strength-deck FILE     the L-bracket as a CalculiX deck
//   --filter '*'           BenchmarkDotNet
switch (args)
{
    case ["main-job"]:
        return MainJob.Run(Console.Out, null);
    case ["main-job", var program]:
        return MainJob.Run(Console.Out, Path.GetFullPath(program));
    case ["beside"]:
        return SideBySide.Run(Console.Out, null);
    case ["beside", var program]:
        return SideBySide.Run(Console.Out, Path.GetFullPath(program));
    case ["same", var before, var after, .. var options]:
        var same = new Options(options, "--jobs", "--strength", "--seed", "--keep");
        var jobs = Math.Max(0, same.Number("--jobs", 200));
        return SameNumbers.Run(Console.Out, new(before), new(after), jobs, same.Number("--strength", jobs), same.Number("--seed", 1), same.Text("--keep"));
    case ["ratio", var before, var after, .. var options]:
        return Ratio.Run(Console.Out, new(before), new(after), Math.Max(1, new Options(options, "--runs").Number("--runs", 15)));
    case ["line"]:
        return LineBenchmark.Run(Console.Out, 2000);
    case ["line", var count] when int.TryParse(count, out var variants) && variants is > 0 and <= 100_000:
        return LineBenchmark.Run(Console.Out, variants);
    case ["nest-sets", var folder]:
        return NestingSets.Run(Console.Out, folder);
    case ["fuzz", .. var numbers] when numbers.Length is >= 1 and <= 4 && numbers.All(n => int.TryParse(n, out _)):
        var given = numbers.Select(n => int.Parse(n, System.Globalization.CultureInfo.InvariantCulture)).ToArray();
        return FuzzBenchmark.Run(Console.Out, given[0], given.ElementAtOrDefault(1), given.Length > 2 ? given[2] : 16, given.ElementAtOrDefault(3));
    case ["fuzz-case", var stream, var number, var file] when int.TryParse(stream, out var s) && int.TryParse(number, out var n):
        File.WriteAllBytes(file, Mutator.Make(s, n).Bytes);
        break;
    case ["search"]:
        SearchTables.Write(Console.Out);
        break;
    case ["strength-tables"]:
        StrengthTables.Write(Console.Out);
        break;
    case ["strength-growth"]:
        StrengthTables.WriteGrowth(Console.Out);
        break;
    case ["strength-pool"]:
        return StrengthPool.Run(Console.Out);
    case ["study"]:
        StudyTimes.Write(Console.Out);
        break;
    case ["solids", var folder]:
        return SolidTable.Write(Console.Out, folder, 1.5, 1);
    case ["solids", var folder, var edge] when double.TryParse(edge, System.Globalization.CultureInfo.InvariantCulture, out var size) && size is >= 0.3 and <= 3:
        return SolidTable.Write(Console.Out, folder, size, 1);
    case ["solids", var folder, var edge, var from] when double.TryParse(edge, System.Globalization.CultureInfo.InvariantCulture, out var size) && size is >= 0.3 and <= 3
            && int.TryParse(from, System.Globalization.CultureInfo.InvariantCulture, out var first):
        return SolidTable.Write(Console.Out, folder, size, first);
    case ["strength-deck", var file]:
        StrengthTables.WriteDeck(file);
        break;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(StrengthBenchmarks).Assembly).Run(args);
        break;
}

return 0;
