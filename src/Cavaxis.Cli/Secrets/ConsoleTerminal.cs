using System.Text;

namespace Cavaxis.Cli.Secrets;

/// <summary>The terminal that the program was started from.</summary>
public sealed class ConsoleTerminal : ISecretTerminal
{
    /// <inheritdoc/>
    public string? Ask(string question)
    {
        Console.Error.Write($"{question}: ");
        StringBuilder typed = new();
        while (true)
        {
            ConsoleKeyInfo key = Console.ReadKey(intercept: true);
            switch (key.Key)
            {
                case ConsoleKey.Enter:
                    Console.Error.WriteLine();
                    return typed.ToString();
                case ConsoleKey.Escape:
                    Console.Error.WriteLine();
                    return null;
                case ConsoleKey.Backspace:
                    typed.Length = Math.Max(0, typed.Length - 1);
                    break;
                default:
                    if (!char.IsControl(key.KeyChar))
                    {
                        typed.Append(key.KeyChar);
                    }

                    break;
            }
        }
    }
}
