namespace Cavaxis.Imaging.Tests.Samples;

/// <summary>A test that reads the test images; skipped with a reason where they are not there.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class SampleFactAttribute : FactAttribute
{
    public SampleFactAttribute()
    {
        if (SampleFolder.Path is null)
        {
            Skip = "The folder shared/reference/imaging with the test images does not lie above the repository.";
        }
    }
}
