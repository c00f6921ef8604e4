using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using Cavaxis.Architecture.Tests.Rooms;
using Microsoft.AspNetCore.Components;

namespace Cavaxis.Architecture.Tests.Code;

public partial class PublicTypeTests
{
    private static readonly Type[] Own = [.. Room.All.SelectMany(static r => r.Assembly.GetTypes())
        .Where(static t => t.Namespace?.StartsWith("Cavaxis.", StringComparison.Ordinal) == true && !IsMadeByTheCompiler(t))];

    /// <summary>The state of an asynchronous lambda carries the mark only on the type around it.</summary>
    private static bool IsMadeByTheCompiler(Type type) =>
        type.IsDefined(typeof(CompilerGeneratedAttribute)) || (type.DeclaringType is Type around && IsMadeByTheCompiler(around));

    [Fact]
    public void A_value_cannot_be_changed_once_it_is_built() => AssertNone(Own.SelectMany(Changeable));

    [Fact]
    public void A_value_that_can_be_changed_is_found() =>
        Assert.Equal(["Loose.Depth", "Loose.Name"], Changeable(typeof(Loose)).Order(StringComparer.Ordinal));

    [Fact]
    public void A_type_is_named_for_what_it_is() => AssertNone(Own.Where(static t => Vague().IsMatch(t.Name)).Select(static t => t.FullName!));

    [Theory]
    [InlineData("StringUtils")]
    [InlineData("PlanHelper")]
    [InlineData("DeviceManager")]
    [InlineData("Helpers")]
    public void A_name_that_says_nothing_is_found(string name) => Assert.Matches(Vague(), name);

    [Fact]
    public void A_class_is_sealed_static_or_meant_to_be_derived_from() => AssertNone(Own
        .Where(IsOpen)
        .Where(static t => !Own.Any(other => other.BaseType == t || (other.BaseType?.IsGenericType == true && other.BaseType.GetGenericTypeDefinition() == t)))
        .Select(static t => t.FullName!));

    [Fact]
    public void An_open_class_is_found() => Assert.True(IsOpen(typeof(PublicTypeTests)) && !IsOpen(typeof(Loose)));

    /// <summary>A component of a page is written by the compiler of pages, which leaves it open; its parameters are set by the page around it.</summary>
    private static bool IsOpen(Type type) => type is { IsClass: true, IsSealed: false, IsAbstract: false } && !typeof(IComponent).IsAssignableFrom(type) && !IsImports(type);

    private static bool IsImports(Type type) => type.Name == "_Imports";

    private static IEnumerable<string> Changeable(Type type)
    {
        const BindingFlags Open = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        return type.GetProperties(Open)
            .Where(static p => !p.IsDefined(typeof(ParameterAttribute)) && !p.IsDefined(typeof(SupplyParameterFromQueryAttribute)))
            .Where(static p => p.SetMethod is { IsPublic: true } set && !set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit)))
            .Select(p => $"{type.Name}.{p.Name}")
            .Concat(type.GetFields(Open).Where(static f => f is { IsInitOnly: false, IsLiteral: false, IsSpecialName: false }).Select(f => $"{type.Name}.{f.Name}"));
    }

    private static void AssertNone(IEnumerable<string> found)
    {
        string[] all = [.. found];
        Assert.True(all.Length == 0, string.Join('\n', all));
        Assert.True(Own.Length > 200, "the types were not read");
    }

    [GeneratedRegex("(Util|Utils|Utility|Utilities|Helper|Helpers|Manager|Managers|Misc|Common|Stuff)$")]
    private static partial Regex Vague();

    private sealed class Loose
    {
#pragma warning disable CA1051 // A public field is what the rule must find.
        public int Depth = 1;
#pragma warning restore CA1051

        public string Name { get; set; } = string.Empty;

        public int Kept { get; init; }
    }
}
