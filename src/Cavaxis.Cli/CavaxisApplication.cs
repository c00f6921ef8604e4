using Cavaxis.Cli.Commands;
using Cavaxis.Cli.Output;
using Cavaxis.Quantities.Faults;
using Spectre.Console.Cli;

namespace Cavaxis.Cli;

/// <summary>The command line: which verbs there are, and how failures turn into words and exit codes.</summary>
/// <param name="output">Where results and faults go.</param>
public sealed class CavaxisApplication(CommandOutput output)
{
    /// <summary>Runs one command.</summary>
    /// <param name="args">Arguments after the program's name.</param>
    /// <returns>The exit code. No exception leaves this method.</returns>
    public ExitCode Run(IReadOnlyList<string> args)
    {
        ArgumentNullException.ThrowIfNull(args);
        try
        {
            return (ExitCode)Build().Run(args.Count == 0 ? ["--help"] : [.. args]);
        }
        catch (InputFaultException fault)
        {
            output.Faults(fault.Faults, args.Contains("--json"));
            return ExitCode.InputError;
        }
        catch (CommandAppException wrong)
        {
            output.Faults(
                [new InputFault(FaultCode.BadOption, "command line", InputFault.Shown(string.Join(' ', args)), "a verb with its options", $"{wrong.Message} See `./run --help`.")],
                args.Contains("--json"));
            return ExitCode.InputError;
        }
#pragma warning disable CA1031 // The last line of defence: whatever else fails becomes exit code 3 in words, never a stack trace.
        catch (Exception failure)
#pragma warning restore CA1031
        {
            output.Failure(failure);
            return ExitCode.InternalError;
        }
    }

    private CommandApp Build()
    {
        CommandApp app = new(new SingleInstanceRegistrar(output));
        app.Configure(configuration =>
        {
            configuration.SetApplicationName("./run");
            configuration.ConfigureConsole(output.Console);
            configuration.PropagateExceptions();
            configuration.AddCommand<PlanCommand>("plan")
                .WithDescription("Plan a cannulation: ranked and explained plans for a case file.")
                .WithExample("plan", "demo/tall-man-severe-lung-failure.json")
                .WithExample("plan", "case.json", "--report", "plan.html", "--weights", "fit=6,recirculationBound=3");
            configuration.AddBranch("cannula", branch =>
            {
                branch.SetDescription("The catalogue of generic devices, and devices of your own.");
                branch.AddCommand<CannulaListCommand>("list").WithDescription("List the cannulae.");
                branch.AddCommand<CannulaShowCommand>("show").WithDescription("Show one cannula: geometry, holes, pressure over flow.");
                branch.AddCommand<CannulaImportCommand>("import").WithDescription("Make a cannula of your own from a bench curve with water (CSV).");
            });
            configuration.AddCommand<ValidateCommand>("validate")
                .WithDescription("Compare the computation with published values and print the table.");
            configuration.AddCommand<SchemaCommand>("schema")
                .WithDescription("Print a JSON Schema: case, plan or rules.");
        });
        return app;
    }
}
