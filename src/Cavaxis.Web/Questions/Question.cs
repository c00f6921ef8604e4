namespace Cavaxis.Web.Questions;

/// <summary>A question that the person at the bedside has; the workspace is ordered by these and not by modules.</summary>
/// <param name="Key">Last part of its address.</param>
/// <param name="Words">The question as it stands in the navigation and as heading.</param>
/// <param name="Asks">What one finds there, in a sentence.</param>
/// <param name="Letter">Key that leads there together with Alt+Shift; differs between questions.</param>
public sealed record Question(string Key, string Words, string Asks, char Letter)
{
    /// <summary>All questions in the order of the work. A later part of the job is a row more.</summary>
    public static IReadOnlyList<Question> All { get; } =
    [
        new("know", "What do we know?", "What is known of the patient, and what is not.", 'K'),
        new("ways", "Which way in?", "Plans for this patient side by side, best first, with their reasons.", 'W'),
        new("lie", "Where does it lie?", "Where tip and ports come to lie along the axis, and what moving them does.", 'L'),
        new("goesin", "How does it go in?", "Where wire and cannulae go on their way in, and where they go astray.", 'G'),
        new("whatif", "What if?", "Heart, vessels and circuit as they run, and what a change would do.", 'I'),
        new("blood", "Who gets which blood?", "Where blood of the heart and of the pump meet in the arteries, what each organ gets, and whether the legs are supplied.", 'B'),
        new("place", "What comes next?", "The steps of the chosen plan as they are done, each with what was seen and by whom.", 'N'),
        new("images", "What do images show?", "Images taken in for the patient, and what is measured in them, with its error.", 'M'),
        new("position", "Is it where it was?", "Every cannula, where it lies by the last image, and what was read or moved since.", 'S'),
        new("run", "How is it running?", "What was observed, what changed, what may be behind it, and what to look at next.", 'R'),
        new("wean", "Can it come off?", "Trials of less support, step by step, beside published criteria.", 'O'),
        new("after", "What comes after?", "Examinations that are due after support, what they found, and what became of the patient.", 'A'),
        new("share", "Who else should look?", "A sealed question to another centre, and the answers that came back.", 'H'),
        new("paper", "On paper", "Steps and report to print or hand over.", 'P'),
    ];

    /// <summary>The address of the question for a patient.</summary>
    /// <param name="patient">Identifier of the patient.</param>
    /// <returns>A relative address.</returns>
    public string Address(string patient) => $"patient/{patient}/{Key}";

    /// <summary>The question of a key.</summary>
    /// <param name="key">Last part of an address.</param>
    /// <returns>The question; null where there is none.</returns>
    public static Question? Of(string? key) => All.FirstOrDefault(q => q.Key == key);
}
