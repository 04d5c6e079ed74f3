using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace BracketGen.Web.Phone;

/// <summary>A certificate that the program makes for itself: for one address, one day, and no disk.</summary>
internal static class PhoneCertificate
{
    /// <summary>How long before and after the start it is valid: clocks of telephones differ, and a session is shorter.</summary>
    public static readonly TimeSpan Before = TimeSpan.FromHours(1), After = TimeSpan.FromHours(24);

    private const int SerialBytes = 16;

    private const string ServerAuthentication = "1.3.6.1.5.5.7.3.1";

    /// <summary>Makes one: ECDSA on P-256, signed by itself, no authority.</summary>
    /// <param name="address">The address it is for.</param>
    /// <param name="now">The time.</param>
    /// <remarks>Two runs never have the same key or serial number: secrets are the one place where the program must not give the same output twice.</remarks>
    public static X509Certificate2 Make(IPAddress address, DateTimeOffset now)
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest("CN=BracketGen", key, HashAlgorithmName.SHA256);
        var names = new SubjectAlternativeNameBuilder();
        names.AddIpAddress(address);
        request.CertificateExtensions.Add(names.Build());
        request.CertificateExtensions.Add(new X509BasicConstraintsExtension(certificateAuthority: false, hasPathLengthConstraint: false, pathLengthConstraint: 0, critical: true));
        request.CertificateExtensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.DigitalSignature, critical: true));
        request.CertificateExtensions.Add(new X509EnhancedKeyUsageExtension([new Oid(ServerAuthentication)], critical: true));
        var serial = RandomNumberGenerator.GetBytes(SerialBytes);
        serial[0] = (byte)(serial[0] & 0x7f | 0x40); // Positive and of this very length (RFC 5280, 4.1.2.2).
        using var made = request.Create(request.SubjectName, X509SignatureGenerator.CreateForECDsa(key), now - Before, now + After, serial);
        var whole = made.CopyWithPrivateKey(key);
        if (!OperatingSystem.IsWindows())
        {
            return whole;
        }

        // Windows serves no certificate whose key was never imported; it keeps such a key in a file of the user until the certificate is disposed of.
        using (whole)
        {
            return X509CertificateLoader.LoadPkcs12(whole.Export(X509ContentType.Pkcs12), null);
        }
    }

    /// <summary>The certificate's SHA-256 fingerprint as browsers show it: <c>AB:CD:…</c>.</summary>
    public static string Fingerprint(X509Certificate2 certificate) => string.Join(':', Convert.ToHexString(SHA256.HashData(certificate.RawData)).Chunk(2).Select(pair => new string(pair)));
}
