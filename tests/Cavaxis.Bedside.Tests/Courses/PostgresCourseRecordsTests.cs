using Cavaxis.Records.Engines;
using Cavaxis.Records.Tests.Engines;

namespace Cavaxis.Bedside.Tests.Courses;

[Collection(PostgresCluster.Collection)]
public sealed class PostgresCourseRecordsTests(PostgresCluster cluster) : CourseRecordsTests
{
    protected override StoreAddress NewAddress() => StoreAddress.Of(cluster.NewSchema());
}
