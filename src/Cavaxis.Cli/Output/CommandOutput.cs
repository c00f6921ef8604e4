using System.Globalization;
using System.Text.Json;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities.Faults;
using Spectre.Console;

namespace Cavaxis.Cli.Output;

/// <summary>Where a command writes: results to the one stream, faults and progress to the other, tables at most 100 columns wide.</summary>
public sealed class CommandOutput
{
    /// <summary>Widest line of a table.</summary>
    public const int Width = 100;

    private readonly TextWriter results;
    private readonly TextWriter faults;

    /// <summary>An output on two streams.</summary>
    /// <param name="results">For results.</param>
    /// <param name="faults">For faults and progress.</param>
    /// <param name="colours">Whether colours may be used; they are never the only signal.</param>
    public CommandOutput(TextWriter results, TextWriter faults, bool colours)
    {
        (this.results, this.faults) = (results, faults);
        bool plain = !colours || Environment.GetEnvironmentVariable("NO_COLOR") is { Length: > 0 };
        Console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = plain ? AnsiSupport.No : AnsiSupport.Detect,
            ColorSystem = plain ? ColorSystemSupport.NoColors : ColorSystemSupport.Standard,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(results),
        });
        Console.Profile.Width = Width;
    }

    /// <summary>Console for tables.</summary>
    public IAnsiConsole Console { get; }

    /// <summary>Writes an object as JSON with units in the field names.</summary>
    /// <param name="value">The object.</param>
    /// <typeparam name="T">Its type.</typeparam>
    public void Json<T>(T value) => results.WriteLine(JsonSerializer.Serialize(value, CavaxisJson.Options));

    /// <summary>Writes a line of text.</summary>
    /// <param name="line">The line.</param>
    public void Line(string line = "") => results.WriteLine(line);

    /// <summary>Writes text as it is.</summary>
    /// <param name="text">The text.</param>
    public void Text(string text) => results.Write(text);

    /// <summary>Writes a line about progress.</summary>
    /// <param name="line">The line.</param>
    public void Progress(string line) => Told(faults, line);

    /// <summary>Writes every fault of an input.</summary>
    /// <param name="list">The faults.</param>
    /// <param name="json">Whether to write JSON, to the stream of results.</param>
    public void Faults(IReadOnlyList<InputFault> list, bool json)
    {
        if (json)
        {
            Told(results, JsonSerializer.Serialize(new FaultList(list), CavaxisJson.Options));
            return;
        }

        Told(faults, list.Count == 1 ? "The input cannot be used:" : $"The input cannot be used, for {list.Count} reasons:");
        foreach (InputFault fault in list)
        {
            Told(faults, $"  {fault}");
        }
    }

    /// <summary>Writes the refusal of a verb.</summary>
    /// <param name="fault">The refusal.</param>
    /// <param name="json">Whether to write JSON, to the stream of results.</param>
    public void Refused(CommandFault fault, bool json)
    {
        if (json)
        {
            Told(results, JsonSerializer.Serialize(new CommandFaultList([fault]), CavaxisJson.Options));
            return;
        }

        Told(faults, "Refused:");
        Told(faults, $"  {fault}");
    }

    /// <summary>Says that the program itself failed, without a stack trace.</summary>
    /// <param name="failure">What happened.</param>
    public void Failure(Exception failure)
    {
        ArgumentNullException.ThrowIfNull(failure);
        Told(faults, $"The program failed ({failure.GetType().Name}: {InputFault.Shown(failure.Message)}). What was printed may be incomplete. Please report it with the command you gave.");
    }

    /// <summary>Breaks a text at spaces so that no line is wider than a table; further lines are set in.</summary>
    /// <param name="lead">What the first line begins with.</param>
    /// <param name="text">The text.</param>
    public void Wrapped(string lead, string text)
    {
        string line = lead;
        string indent = new(' ', Math.Min(lead.Length, 5));
        bool empty = true;
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (!empty && line.Length + word.Length + 1 > Width)
            {
                Line(line);
                line = indent;
                empty = true;
            }

            line += empty ? word : $" {word}";
            empty = false;
        }

        Line(line);
    }

    /// <summary>A table with a title, in the one style of the program.</summary>
    internal static Table Titled(string title, params string[] columns) => new Table()
        .Border(TableBorder.Simple)
        .Title(Markup.Escape(title))
        .AddColumns(columns);

    /// <summary>A probability in whole percent.</summary>
    internal static string Percent(double probability) => string.Create(CultureInfo.InvariantCulture, $"{probability * 100:F0} %");

    /// <summary>Says something that must not itself end the program: with nobody left to tell, the exit code still speaks.</summary>
    private static void Told(TextWriter writer, string line)
    {
        try
        {
            writer.WriteLine(line);
        }
        catch (Exception e) when (e is IOException or ObjectDisposedException)
        {
            // The stream is full or closed; a progress line from a timer or the words of a fault are not worth a crash.
        }
    }
}
