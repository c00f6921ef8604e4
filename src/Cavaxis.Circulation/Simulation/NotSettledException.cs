namespace Cavaxis.Circulation.Simulation;

/// <summary>A set of parameters whose circulation does not come to rest. It has no result.</summary>
/// <param name="reason">What kept moving, in plain words.</param>
public sealed class NotSettledException(string reason) : Exception(reason);
