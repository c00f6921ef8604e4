using Cavaxis.Planning.Json;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>Words as typed.</summary>
internal static class OptionWords
{
    /// <summary>One of the words of a list of choices, written as in files.</summary>
    /// <param name="option">Name of the option.</param>
    /// <param name="text">What was typed; null for none.</param>
    /// <param name="choices">The choices that are accepted; all of the list where none are named.</param>
    /// <typeparam name="T">The list.</typeparam>
    /// <returns>The choice.</returns>
    public static T Choice<T>(string option, string? text, params T[] choices)
        where T : struct, Enum
    {
        T[] accepted = choices.Length == 0 ? Enum.GetValues<T>() : choices;
        foreach (T choice in accepted)
        {
            if (JsonName.Of(choice.ToString()) == text)
            {
                return choice;
            }
        }

        throw OptionNumbers.Refused(option, text ?? "(nothing)", string.Join(", ", accepted.Select(static c => JsonName.Of(c.ToString()))), "Choose one of these words.");
    }
}
