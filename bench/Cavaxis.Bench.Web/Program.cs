using System.Globalization;
using Cavaxis.Bench.Web;

// Measures a workspace that runs; started with the address that it printed.
if (args.Length != 1 || !Uri.TryCreate(args[0], UriKind.Absolute, out Uri? address))
{
    Console.Error.WriteLine("Give the address that the workspace prints when it starts.");
    return 2;
}

foreach (DragFigures figures in await DragFigures.MeasureAsync(address))
{
    Console.WriteLine(figures.ToString(CultureInfo.InvariantCulture));
}

return 0;
