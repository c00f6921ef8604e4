using Cavaxis.Web.SignIn;

namespace Cavaxis.Web.Tests.SignIn;

public class SignInGateTests
{
    [Theory]
    [InlineData("/patient/x/know?group=blood", "/patient/x/know?group=blood")]
    [InlineData("/", "/")]
    [InlineData(null, "/")]
    [InlineData("", "/")]
    [InlineData("https:" + "//elsewhere.example/", "/")]
    [InlineData("//elsewhere.example/", "/")]
    [InlineData("/\\elsewhere.example/", "/")]
    [InlineData("javascript:alert(1)", "/")]
    [InlineData("/a\r\nSet-Cookie: x", "/")]
    [InlineData("/sign-in?to=/sign-in", "/")]
    public void After_signing_in_one_stays_in_this_workspace(string? to, string onward) => Assert.Equal(onward, SignInGate.Onward(to));
}
