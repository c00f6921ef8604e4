using Cavaxis.Cli;
using Cavaxis.Cli.Output;

return (int)new CavaxisApplication(new CommandOutput(Console.Out, Console.Error, !Console.IsOutputRedirected)).Run(args);
