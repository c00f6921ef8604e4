namespace Cavaxis.EndToEnd.Tests.Workspace;

/// <summary>Tests that share one server and one browser, one after the other: they share two cores as well.</summary>
[CollectionDefinition(nameof(InTheBrowser))]
public sealed class InTheBrowser : ICollectionFixture<WorkspaceBrowser>;
