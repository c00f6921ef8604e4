using Cavaxis.Bedside.Sealing;
using Cavaxis.Cli.Commands;
using Cavaxis.Cli.CourseVerbs;
using Cavaxis.Cli.EchoVerbs;
using Cavaxis.Cli.ImageVerbs;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.PackVerbs;
using Cavaxis.Cli.RapidVerbs;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;
using Cavaxis.Cli.SheetVerbs;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Faults;
using Spectre.Console.Cli;

namespace Cavaxis.Cli;

/// <summary>The command line: which verbs there are, and how failures turn into words and exit codes.</summary>
/// <param name="output">Where results and faults go.</param>
/// <param name="secrets">Gives passwords; null for those of this process.</param>
public sealed class CavaxisApplication(CommandOutput output, SecretReader? secrets = null)
{
    private const string CannulaBranch = "cannula";
    private const string ImageBranch = "image";

    /// <summary>Branches whose arguments are not repeated in faults: someone may have typed a secret among them.</summary>
    private static readonly string[] RecordBranches = ["record", "people", "patient", "pack", "course", "programme"];

    /// <summary>Runs one command.</summary>
    /// <param name="args">Arguments after the program's name.</param>
    /// <returns>The exit code. No exception leaves this method.</returns>
    public ExitCode Run(IReadOnlyList<string> args)
    {
        ArgumentNullException.ThrowIfNull(args);
        try
        {
            return (ExitCode)Build().Run(IsIncomplete(args) ? [.. args, "--help"] : [.. args]);
        }
        catch (InputFaultException fault)
        {
            output.Faults(fault.Faults, args.Contains("--json"));
            return ExitCode.InputError;
        }
        catch (CommandAppException wrong)
        {
            bool mayHoldSecrets = RecordBranches.Contains(args[0]);
            string shown = mayHoldSecrets ? $"{args[0]} …" : InputFault.Shown(string.Join(' ', args));
            string remedy = mayHoldSecrets ? "An argument is missing, unknown or too many; a password is never an argument." : wrong.Message;
            output.Faults([new InputFault(FaultCode.BadOption, "command line", shown, "a verb with its options", $"{remedy} See `./run --help`.")], args.Contains("--json"));
            return ExitCode.InputError;
        }
        catch (CommandFaultException refused)
        {
            output.Refused(refused.Fault, args.Contains("--json"));
            return ExitCode.InputError;
        }
        catch (SealFaultException refused)
        {
            output.Refused(CommandFault.Of(refused.Fault), args.Contains("--json"));
            return ExitCode.InputError;
        }
        catch (StoreFaultException refused)
        {
            output.Refused(CommandFault.Of(refused.Fault), args.Contains("--json"));
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

    /// <summary>True where a verb is still to be named: the answer is the list of verbs, and that is no failure.</summary>
    private static bool IsIncomplete(IReadOnlyList<string> args) => args is [] or [CannulaBranch] or [EchoVerbTable.Branch] or [ImageBranch] || (args is [string only] && RecordBranches.Contains(only));

    private CommandApp Build()
    {
        CommandApp app = new(new SingleInstanceRegistrar(output, secrets ?? SecretReader.OfProcess));
        app.Configure(configuration =>
        {
            configuration.SetApplicationName("./run");
            configuration.ConfigureConsole(output.Console);
            configuration.PropagateExceptions();

            // A misspelt option must not be passed over in silence: the plan would be another than the one asked for.
            configuration.UseStrictParsing();
            configuration.AddCommand<PlanCommand>("plan")
                .WithDescription("Plan a cannulation: ranked and explained plans for a case file.")
                .WithExample("plan", "demo/tall-man-severe-lung-failure.json")
                .WithExample("plan", "case.json", "--report", "plan.html", "--weights", "fit=6,recirculationBound=3");
            configuration.AddCommand<CirculationCommand>("circulation")
                .WithDescription("Compute heart, vessels, blood gases and the running circuit of a case.")
                .WithExample("circulation", "demo/running-veno-venous.json")
                .WithExample("circulation", "case.json", "--set", "flow=4.5", "--set", "bloodVolumeMl=+500", "--seconds", "60", "--plot", "circulation.svg");
            configuration.AddCommand<CalibrateCommand>("calibrate")
                .WithDescription("Fit the circulation of a case to its bedside readings, with the spread that they leave.")
                .WithExample("calibrate", "demo/running-veno-venous.json");
            configuration.AddCommand<WhatIfCommand>("whatif")
                .WithDescription("Ask the fitted circulation what a change would do, as bands.")
                .WithExample("whatif", "demo/running-veno-arterial.json", "--change", "flow=3");
            configuration.AddCommand<InsertionCommand>("insertion")
                .WithDescription("Bring wire and cannulae of a plan into sampled curved anatomies: where they end, what goes wrong first, what would change it.")
                .WithExample("insertion", "demo/tall-man-severe-lung-failure.json", "--plan", "12", "--wire", "stiff");
            configuration.AddCommand<ArteriesCommand>("arteries")
                .WithDescription("Who gets which blood on arterial support: where the two flows meet over the beat, oxygen at heart, brain, hands, kidneys and legs, and whether the legs are supplied.")
                .WithExample("arteries", "demo/running-veno-arterial.json", "--drawing", "arteries.svg")
                .WithExample("arteries", "case.json", "--flow", "2", "--flow", "4", "--strength", "0.5", "--strength", "2");
            configuration.AddBranch(CannulaBranch, branch =>
            {
                branch.SetDescription("The catalogue of generic devices, and devices of your own.");
                branch.AddCommand<CannulaListCommand>("list").WithDescription("List the cannulae.");
                branch.AddCommand<CannulaShowCommand>("show").WithDescription("Show one cannula: geometry, holes, pressure over flow.");
                branch.AddCommand<CannulaImportCommand>("import").WithDescription("Make a cannula of your own from a bench curve with water (CSV).");
            });
            configuration.AddCommand<ValidateCommand>("validate")
                .WithDescription("Compare the computation with published values and print the table.");
            configuration.AddCommand<SchemaCommand>("schema")
                .WithDescription("Print a JSON Schema: case, plan, rules, circulation, calibration, whatif, insertion, arteries, scene, rapid or rapid-criteria.");
            EchoVerbTable.AddTo(configuration);
            RapidVerbTable.AddTo(configuration);
            RecordVerbTable.AddTo(configuration, SheetVerbTable.AddTo);
            PackVerbTable.AddTo(configuration);
            ImageVerbTable.AddTo(configuration, ImageBranch);
            CourseVerbTable.AddTo(configuration);
            SheetVerbTable.AddProgramme(configuration, CourseVerbTable.AddProgramme);
        });
        return app;
    }
}
