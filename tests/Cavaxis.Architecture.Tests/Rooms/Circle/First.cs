namespace Cavaxis.Architecture.Tests.Rooms.Circle.One
{
    /// <summary>One half of a circle, for the rule that must find it.</summary>
    public sealed class First
    {
        public Two.Second? Next { get; init; }
    }
}

namespace Cavaxis.Architecture.Tests.Rooms.Circle.Two
{
    /// <summary>The other half.</summary>
    public sealed class Second
    {
        public One.First? Next { get; init; }
    }
}
