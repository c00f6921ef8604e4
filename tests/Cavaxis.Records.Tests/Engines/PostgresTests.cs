namespace Cavaxis.Records.Tests.Engines;

/// <summary>All that needs the server shares one.</summary>
[CollectionDefinition(PostgresCluster.Collection)]
public sealed class PostgresTests : ICollectionFixture<PostgresCluster>;
