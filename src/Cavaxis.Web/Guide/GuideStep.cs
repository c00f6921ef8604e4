namespace Cavaxis.Web.Guide;

/// <summary>One step of the guided first use.</summary>
/// <param name="Key">Question that it stands at; empty for the list of patients.</param>
/// <param name="Title">What it is about.</param>
/// <param name="Words">What to look at and what to try.</param>
public sealed record GuideStep(string Key, string Title, string Words)
{
    /// <summary>The steps in order. They are walked on an invented patient and take less than five minutes.</summary>
    public static IReadOnlyList<GuideStep> All { get; } =
    [
        new("", "Whose question?", "The list of patients. Invented cases are marked with a dashed border. The guide uses one of them; nothing you do there concerns a real person."),
        new("know", "What do we know?", "The large number is the answer of this page; the question mark beside it explains it with equation and source. Choose \"Blood\", change the haemoglobin, and see \"Plan up to date\" come back by itself. The button \"not known\" is an answer too."),
        new("ways", "Which way in?", "Plans side by side, best first, with what speaks against each. Choose one: the line at the left and the steps follow it."),
        new("lie", "Where does it lie?", "The axis to scale. Move a cannula, or turn it, and see where its ports come to lie and what that does."),
        new("goesin", "How does it go in?", "Wire and cannula on their way, in three dimensions. Press Play, turn the picture by dragging, and see at which step it goes wrong in which share of the anatomies."),
        new("whatif", "What if?", "Heart, vessels and circuit as they run. Change the flow and read what changed, with its band, and why."),
        new("paper", "On paper", "Steps with their hard stops, and the report to print or hand over. That is all: go back to the list and begin with your own patient."),
    ];
}
