namespace Cavaxis.Pictures;

/// <summary>One picture that is wanted of the workspace.</summary>
/// <param name="File">Name of its file.</param>
/// <param name="Patient">Words of the demo patient's title; empty for a page of no patient.</param>
/// <param name="Question">Last part of the address.</param>
/// <param name="Room">dark or bright.</param>
/// <param name="Ready">What stands on the page when it can be taken.</param>
/// <param name="Press">What is pressed before; empty for nothing.</param>
/// <param name="Show">What is brought to the upper edge; empty for the top of the page.</param>
internal sealed record PictureOrder(string File, string Patient, string Question, string Room, string Ready, string Press = "", string Show = "")
{
    private const string UpToDate = ".plan-state:has-text('up to date')";

    /// <summary>The pictures of the README and of docs/workspace.md.</summary>
    public static IReadOnlyList<PictureOrder> All { get; } =
    [
        new("workspace-ways.jpg", "Tall man", "ways", "dark", UpToDate),
        new("workspace-lie.jpg", "Tall man", "lie", "bright", UpToDate, Show: ".lie"),
        new("workspace-whatif.jpg", "Veno-venous support running", "whatif", "dark", ".reading-list li", Press: "[data-step=flow-more]", Show: ".whatif-grid"),
        new("workspace-blood.jpg", "Femoral veno-arterial support running", "blood", "dark", ".blood-sheet svg", Show: ".blood-grid"),
        new("workspace-run.jpg", "Veno-venous support running", "run", "dark", ".cause", Show: "#why-title"),
        new("workspace-goesin.jpg", "Tall man", "goesin", "dark", ".way[data-ready]", Show: ".way"),
        new("workspace-exercise.jpg", "", "exercises?seed=7", "dark", "#score", Press: "#not-in-view", Show: "#question"),
        new("workspace-know.jpg", "Tall man", "know", "bright", UpToDate),
    ];
}
