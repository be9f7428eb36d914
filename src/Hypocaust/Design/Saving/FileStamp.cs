using System.Security.Cryptography;

namespace Hypocaust.Design;

/// <summary>What a file held when it was read or written: by it we notice that somebody else has changed it since.</summary>
/// <param name="Length">Bytes.</param>
/// <param name="Sha256">Digest of the bytes, hexadecimal.</param>
public sealed record FileStamp(long Length, string Sha256)
{
    /// <summary>The stamp of some bytes.</summary>
    public static FileStamp Of(ReadOnlySpan<byte> bytes) =>
        new(bytes.Length, Convert.ToHexString(SHA256.HashData(bytes)));
}

/// <summary>A design and the stamp of the file from which it was read.</summary>
/// <param name="Document">The design.</param>
/// <param name="Stamp">The file as it was.</param>
public sealed record OpenedDesign(DesignDocument Document, FileStamp Stamp);
