using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace Cavaxis.EndToEnd.Tests.Workspace;

/// <summary>A certificate that signs itself, for this test and hour alone, as the two files that the workspace takes.</summary>
internal static class OwnCertificate
{
    /// <summary>Writes certificate and key as PEM.</summary>
    /// <param name="name">Host name that it is made out to.</param>
    /// <param name="certificate">Path of the certificate.</param>
    /// <param name="key">Path of the key.</param>
    public static void Write(string name, string certificate, string key)
    {
        using ECDsa pair = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        CertificateRequest request = new($"CN={name}", pair, HashAlgorithmName.SHA256);
        SubjectAlternativeNameBuilder names = new();
        names.AddDnsName(name);
        names.AddIpAddress(IPAddress.Loopback);
        request.CertificateExtensions.Add(names.Build());
        DateTimeOffset now = DateTimeOffset.UtcNow;
        using X509Certificate2 made = request.CreateSelfSigned(now.AddMinutes(-5), now.AddHours(1));
        File.WriteAllText(certificate, made.ExportCertificatePem());
        File.WriteAllText(key, pair.ExportPkcs8PrivateKeyPem());
    }
}
