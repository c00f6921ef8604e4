using Cavaxis.Validation;

namespace Cavaxis.Reference.Tests;

/// <summary>
/// Documents that are computed. The committed file must be what the program computes now; with CAVAXIS_WRITE_DOCS=1 in the
/// environment the test writes it instead, and its difference is read before it is committed.
/// </summary>
public class WrittenDocumentTests
{
    [Fact]
    public void The_validation_document_is_what_the_rows_say_now() =>
        Check("validation.md", ValidationDocument.Write(ReferenceRows.All));

    [Fact]
    public void The_dual_lumen_document_is_what_the_model_says_now() =>
        Check("dual-lumen-by-height.md", DualLumenDocument.Write());

    private static void Check(string name, string computed)
    {
        string path = Path.Combine(RepositoryFolder.Docs, name);
        if (Environment.GetEnvironmentVariable("CAVAXIS_WRITE_DOCS") == "1")
        {
            File.WriteAllText(path, computed);
        }

        Assert.True(File.Exists(path), $"docs/{name} is missing: run the tests once with CAVAXIS_WRITE_DOCS=1.");
        Assert.Equal(computed, File.ReadAllText(path));
    }
}
