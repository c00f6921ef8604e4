using Cavaxis.Records.Engines;
using Cavaxis.Records.Tests.Engines;

namespace Cavaxis.Records.Tests.Patients;

[Collection(PostgresCluster.Collection)]
public sealed class PostgresPatientRecordsTests(PostgresCluster cluster) : PatientRecordsTests
{
    protected override StoreAddress NewAddress() => StoreAddress.Of(cluster.NewSchema());
}
