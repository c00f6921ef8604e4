using System.Security.Cryptography;
using System.Text;
using Hl7.Fhir.Model;

namespace Cavaxis.Bedside.Fhir;

/// <summary>Identifiers inside one bundle: from its chance and the part's name, so that the same bundle is the same bytes and two bundles share none.</summary>
/// <param name="bundle">The bundle's chance.</param>
internal sealed class FhirNames(Guid bundle)
{
    /// <summary>The address of a part.</summary>
    public string Url(string part) => $"urn:uuid:{Of(part):D}";

    /// <summary>A reference to a part.</summary>
    public ResourceReference Reference(string part) => new(Url(part));

    /// <summary>A UUID of version 8 (RFC 9562, section 5.8) from a hash.</summary>
    private Guid Of(string part)
    {
        Span<byte> bytes = SHA256.HashData([.. bundle.ToByteArray(bigEndian: true), .. Encoding.UTF8.GetBytes(part)]).AsSpan(0, 16);
        bytes[6] = (byte)((bytes[6] & 0x0F) | 0x80);
        bytes[8] = (byte)((bytes[8] & 0x3F) | 0x80);
        return new Guid(bytes, bigEndian: true);
    }
}
