namespace Cavaxis.Planning.Json;

/// <summary>Turns rising byte offsets of UTF-8 text into lines and columns in one pass.</summary>
/// <param name="utf8">The text.</param>
internal ref struct PlaceCursor(ReadOnlySpan<byte> utf8)
{
    private readonly ReadOnlySpan<byte> _utf8 = utf8;
    private int _offset;
    private int _line = 1;
    private int _column = 1;

    /// <summary>The place of a byte; offsets must not fall from call to call.</summary>
    /// <param name="offset">Byte offset, at most the length of the text.</param>
    public TextPlace At(int offset)
    {
        for (; _offset < offset && _offset < _utf8.Length; _offset++)
        {
            byte b = _utf8[_offset];
            if (b == (byte)'\n')
            {
                _line++;
                _column = 1;
            }
            else if (StartsCharacter(b))
            {
                _column++;
            }
        }

        return new TextPlace(_line, _column);
    }

    // Continuation bytes of UTF-8 are 10xxxxxx (RFC 3629, section 3); every other byte starts a character.
    private static bool StartsCharacter(byte b) => (b & 0xC0) != 0x80;
}
