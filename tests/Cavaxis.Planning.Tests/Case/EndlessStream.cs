namespace Cavaxis.Planning.Tests.Case;

/// <summary>A stream of blanks that is made while it is read, so that a large file needs no disk and no memory.</summary>
/// <param name="length">Bytes it gives.</param>
internal sealed class EndlessStream(long length) : Stream
{
    private long _position;

    /// <summary>Byte at which reading fails.</summary>
    public long BreaksAt { get; init; } = long.MaxValue;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => _position;
        set => throw new NotSupportedException();
    }

    public override void Flush()
    {
    }

    // Gives odd pieces, as a pipe does.
    public override int Read(byte[] buffer, int offset, int count)
    {
        if (_position >= BreaksAt)
        {
            throw new IOException("The device went away.");
        }

        int given = (int)Math.Min(Math.Min(count, 4099), Math.Min(length, BreaksAt) - _position);
        buffer.AsSpan(offset, given).Fill((byte)' ');
        _position += given;
        return given;
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
}
