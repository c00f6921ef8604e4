using Cavaxis.Records.Engines;
using Cavaxis.Records.Tests;

namespace Cavaxis.Bedside.Tests.Courses;

public sealed class SqliteCourseRecordsTests : CourseRecordsTests
{
    private readonly TemporaryFolder folder = new();

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        folder.Dispose();
    }

    protected override StoreAddress NewAddress() => StoreAddress.Of(folder.File("store.db"));
}
