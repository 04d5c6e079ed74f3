using System.Buffers.Text;
using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using BracketGen.Web.Phone;

namespace BracketGen.Web.Tests;

/// <summary>Code, session, certificate and addresses of the phone's side, by a clock that the test sets.</summary>
public class PairingTests
{
    private readonly SetClock _clock = new();

    [Fact]
    public void Code_and_key_are_long_and_never_the_same()
    {
        var pairings = Enumerable.Range(0, 100).Select(_ => new Pairing(_clock)).ToList();
        Assert.All(pairings, p => Assert.True(8 * Base64Url.DecodeFromChars(p.Code).Length >= 128));
        Assert.Equal(100, pairings.Select(p => p.Code).Distinct().Count());
        var keys = pairings.Select(p => p.Pair(p.Code)!).ToList();
        Assert.All(keys, k => Assert.Equal(256, 8 * Base64Url.DecodeFromChars(k).Length));
        Assert.Equal(100, keys.Distinct().Count());
    }

    [Fact]
    public void A_code_works_once()
    {
        var pairing = new Pairing(_clock);
        var key = pairing.Pair(pairing.Code);
        Assert.NotNull(key);
        Assert.Null(pairing.Pair(pairing.Code));
        Assert.True(pairing.IsPaired(key));
        Assert.Equal(PairingState.Paired, pairing.State);
        foreach (var other in new[] { null, "", key[1..], key + "A", key.ToLowerInvariant() + "x", pairing.Code })
        {
            Assert.False(pairing.IsPaired(other));
        }
    }

    [Fact]
    public void A_code_runs_out_after_two_minutes()
    {
        var pairing = new Pairing(_clock);
        _clock.Pass(TimeSpan.FromSeconds(119));
        Assert.Equal(PairingState.Open, pairing.State);
        _clock.Pass(TimeSpan.FromSeconds(1));
        Assert.Null(pairing.Pair(pairing.Code));
        Assert.Equal(PairingState.RanOut, pairing.State);
    }

    // The counting clock stands still while a machine sleeps; the other one can be set back.
    [Fact]
    public void Neither_sleep_nor_a_clock_set_back_makes_a_code_last_longer()
    {
        var asleep = new Pairing(_clock);
        _clock.Sleep(TimeSpan.FromMinutes(2));
        Assert.Null(asleep.Pair(asleep.Code));
        var setBack = new Pairing(_clock);
        _clock.SetBack(TimeSpan.FromDays(1));
        _clock.Pass(TimeSpan.FromMinutes(2));
        Assert.Null(setBack.Pair(setBack.Code));
    }

    [Fact]
    public void Some_wrong_codes_close_it()
    {
        var pairing = new Pairing(_clock);
        for (var wrong = 1; wrong < Pairing.MostWrong; wrong++)
        {
            Assert.Null(pairing.Pair(new string('A', 22)));
            Assert.Equal(PairingState.Open, pairing.State);
        }

        Assert.Null(pairing.Pair(""));
        Assert.Equal(PairingState.Closed, pairing.State);
        Assert.Null(pairing.Pair(pairing.Code));
    }

    [Fact]
    public void A_session_ends_after_eight_hours_and_after_one_without_a_request()
    {
        var busy = new Pairing(_clock);
        var key = busy.Pair(busy.Code);
        for (var half = 0; half < 16; half++)
        {
            Assert.True(busy.IsPaired(key), $"after {half} half hours");
            _clock.Pass(TimeSpan.FromMinutes(30));
        }

        Assert.False(busy.IsPaired(key));
        Assert.Equal(PairingState.Ended, busy.State);
        var idle = new Pairing(_clock);
        var other = idle.Pair(idle.Code);
        _clock.Pass(TimeSpan.FromMinutes(59));
        Assert.True(idle.IsPaired(other));
        _clock.Sleep(TimeSpan.FromMinutes(60));
        Assert.False(idle.IsPaired(other));
    }

    [Fact]
    public void A_new_code_comes_only_where_none_is_good()
    {
        var pairing = new Pairing(_clock);
        var first = pairing.Code;
        Assert.False(pairing.Renew());
        _clock.Pass(TimeSpan.FromMinutes(3));
        Assert.True(pairing.Renew());
        Assert.Null(pairing.Pair(first));
        var key = pairing.Pair(pairing.Code);
        Assert.NotNull(key);
        Assert.False(pairing.Renew());
        _clock.Pass(TimeSpan.FromHours(2));
        Assert.True(pairing.Renew());
        Assert.False(pairing.IsPaired(key));
    }

    // The certificate is read back by the framework's own reader, its fingerprint is worked out a second time.
    [Theory]
    [InlineData("192.168.1.20")]
    [InlineData("fd00::2")]
    public void The_certificate_is_for_one_address_and_one_day(string text)
    {
        var address = IPAddress.Parse(text);
        using var certificate = PhoneCertificate.Make(address, _clock.GetUtcNow());
        using var key = certificate.GetECDsaPublicKey()!;
        Assert.Equal("1.2.840.10045.3.1.7", key.ExportParameters(false).Curve.Oid.Value);
        Assert.Equal([address], certificate.Extensions.OfType<X509SubjectAlternativeNameExtension>().Single().EnumerateIPAddresses());
        Assert.Empty(certificate.Extensions.OfType<X509SubjectAlternativeNameExtension>().Single().EnumerateDnsNames());
        Assert.False(certificate.Extensions.OfType<X509BasicConstraintsExtension>().Single().CertificateAuthority);
        Assert.InRange(certificate.NotAfter - certificate.NotBefore, Pairing.SessionLife, TimeSpan.FromHours(25));
        Assert.Equal(Convert.ToHexString(certificate.GetCertHash(HashAlgorithmName.SHA256)), PhoneCertificate.Fingerprint(certificate).Replace(":", "", StringComparison.Ordinal));
        using var second = PhoneCertificate.Make(address, _clock.GetUtcNow());
        Assert.NotEqual(certificate.SerialNumber, second.SerialNumber);
        Assert.NotEqual(certificate.PublicKey.EncodedKeyValue.RawData, second.PublicKey.EncodedKeyValue.RawData);
    }

    // RFC 1918, 3, and RFC 4193, 3.1: first and last address of each block, and their neighbours.
    [Theory]
    [InlineData("10.0.0.0", true)]
    [InlineData("10.255.255.255", true)]
    [InlineData("9.255.255.255", false)]
    [InlineData("11.0.0.0", false)]
    [InlineData("172.16.0.0", true)]
    [InlineData("172.31.255.255", true)]
    [InlineData("172.15.255.255", false)]
    [InlineData("172.32.0.0", false)]
    [InlineData("192.168.0.0", true)]
    [InlineData("192.168.255.255", true)]
    [InlineData("192.167.255.255", false)]
    [InlineData("192.169.0.0", false)]
    [InlineData("fc00::", true)]
    [InlineData("fdff:ffff:ffff:ffff:ffff:ffff:ffff:ffff", true)]
    [InlineData("fbff::1", false)]
    [InlineData("fe00::1", false)]
    [InlineData("0.0.0.0", false)]
    [InlineData("127.0.0.1", false)]
    [InlineData("169.254.1.1", false)]
    [InlineData("192.0.2.2", false)]
    [InlineData("::", false)]
    [InlineData("::1", false)]
    [InlineData("fe80::1", false)]
    [InlineData("2001:db8::1", false)]
    [InlineData("::ffff:192.168.1.1", false)]
    public void Only_addresses_of_private_networks_are_served_on(string address, bool isPrivate) => Assert.Equal(isPrivate, NetworkAddress.IsPrivate(IPAddress.Parse(address)));

    [Fact]
    public void Of_several_addresses_the_user_names_one()
    {
        NetworkAddress At(string address) => new(IPAddress.Parse(address), "card");
        var (wired, wireless, six) = (At("10.0.0.5"), At("192.168.1.20"), At("fd00::2"));
        Assert.Null(NetworkAddress.Chosen([], null));
        Assert.Equal(wired, NetworkAddress.Chosen([wired], null));
        Assert.Equal(wired, NetworkAddress.Chosen([wired, six], null));
        Assert.Equal(six, NetworkAddress.Chosen([six], null));
        Assert.Null(NetworkAddress.Chosen([wired, wireless], null));
        Assert.Equal(wireless, NetworkAddress.Chosen([wired, wireless, six], wireless.Address));
        Assert.Equal(six, NetworkAddress.Chosen([wired, six], six.Address));
        Assert.Null(NetworkAddress.Chosen([wired, wireless], IPAddress.Any));
        Assert.Null(NetworkAddress.Chosen([wired, wireless], IPAddress.Parse("192.168.1.21")));
        Assert.All(NetworkAddress.OfThisMachine(), a => Assert.True(NetworkAddress.IsPrivate(a.Address)));
    }

    [Theory]
    [InlineData("libssl.so.3", null, true)]
    [InlineData("libssl.so.1.1", null, true)]
    [InlineData("libssl.so.9", "9", true)]
    [InlineData("libssl.so.9", null, false)]
    [InlineData("", "", false)]
    public void The_TLS_library_is_looked_for_by_its_names(string there, string? version, bool isThere) => Assert.Equal(isThere, TlsLibrary.IsThere(name => name == there, version));

    [Fact]
    public void Nobody_takes_all_connections_and_the_phone_keeps_its_own()
    {
        var quota = new ConnectionQuota();
        IPAddress Stranger(int number) => IPAddress.Parse($"10.0.0.{number}");
        var phone = IPAddress.Parse("10.0.1.1");
        for (var i = 0; i < ConnectionQuota.OfOne; i++)
        {
            Assert.True(quota.Enter(Stranger(1)));
        }

        Assert.False(quota.Enter(Stranger(1)));
        Assert.True(quota.Enter(phone));
        quota.Keep(phone);
        var more = Enumerable.Range(2, 60).Count(i => quota.Enter(Stranger(i)));
        Assert.Equal(ConnectionQuota.OfStrangers, ConnectionQuota.OfOne + more);
        for (var i = 1; i < ConnectionQuota.OfOne; i++)
        {
            Assert.True(quota.Enter(phone));
        }

        Assert.False(quota.Enter(phone));
        quota.Leave(phone);
        quota.Leave(Stranger(1));
        Assert.True(quota.Enter(phone));
        Assert.True(quota.Enter(Stranger(99)));
    }
}
