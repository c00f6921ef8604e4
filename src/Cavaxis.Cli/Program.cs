using System.Text;
using Cavaxis.Cli;
using Cavaxis.Cli.Output;

// Results are UTF-8 whatever the locale says: JSON knows no other encoding, and the same command gives the same bytes everywhere.
Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
return (int)new CavaxisApplication(new CommandOutput(Console.Out, Console.Error, !Console.IsOutputRedirected)).Run(args);
