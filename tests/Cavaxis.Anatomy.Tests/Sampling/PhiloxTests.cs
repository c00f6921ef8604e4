using Cavaxis.Anatomy.Sampling;

namespace Cavaxis.Anatomy.Tests.Sampling;

public class PhiloxTests
{
    // The three lines "philox4x32 10" of kat_vectors in the Random123 distribution (D. E. Shaw Research).
    [Theory]
    [InlineData(0u, 0u, 0u, 0u, 0u, 0u, 0x6627e8d5u, 0xe169c58du, 0xbc57ac4cu, 0x9b00dbd8u)]
    [InlineData(0xffffffffu, 0xffffffffu, 0xffffffffu, 0xffffffffu, 0xffffffffu, 0xffffffffu, 0x408f276du, 0x41c83b0eu, 0xa20bc7c6u, 0x6d5451fdu)]
    [InlineData(0x243f6a88u, 0x85a308d3u, 0x13198a2eu, 0x03707344u, 0xa4093822u, 0x299f31d0u, 0xd16cfe09u, 0x94fdccebu, 0x5001e420u, 0x24126ea1u)]
    public void The_generator_reproduces_the_published_vectors(
        uint c0, uint c1, uint c2, uint c3, uint k0, uint k1, uint w0, uint w1, uint w2, uint w3) =>
        Assert.Equal((w0, w1, w2, w3), Philox.Bits(c0, c1, c2, c3, k0 | ((ulong)k1 << 32)));
}
