using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Spectre.Console.Cli;

namespace Cavaxis.Cli;

/// <summary>Hands the output to the commands; everything else the framework makes itself.</summary>
/// <param name="output">The output that commands ask for.</param>
/// <param name="secrets">The passwords that commands ask for.</param>
internal sealed class SingleInstanceRegistrar(CommandOutput output, SecretReader secrets) : ITypeRegistrar, ITypeResolver
{
    private readonly Dictionary<Type, Func<object>> made = new() { [typeof(CommandOutput)] = () => output, [typeof(SecretReader)] = () => secrets };
    private readonly Dictionary<Type, Type> types = [];

    /// <inheritdoc/>
    public ITypeResolver Build() => this;

    /// <inheritdoc/>
    public void Register(Type service, Type implementation) => types[service] = implementation;

    /// <inheritdoc/>
    public void RegisterInstance(Type service, object implementation) => made[service] = () => implementation;

    /// <inheritdoc/>
    public void RegisterLazy(Type service, Func<object> factory) => made[service] = factory;

    /// <inheritdoc/>
    public object? Resolve(Type? type)
    {
        if (type is null)
        {
            return null;
        }

        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IEnumerable<>))
        {
            Type one = type.GetGenericArguments()[0];
            object? item = Resolve(one);
            Array all = Array.CreateInstance(one, item is null ? 0 : 1);
            if (item is not null)
            {
                all.SetValue(item, 0);
            }

            return all;
        }

        if (made.TryGetValue(type, out Func<object>? factory))
        {
            return factory();
        }

        Type wanted = types.GetValueOrDefault(type, type);
        if (wanted.IsAbstract || wanted.IsInterface)
        {
            return null;
        }

        object?[] parts = [.. wanted.GetConstructors()[0].GetParameters().Select(parameter => Resolve(parameter.ParameterType))];
        return Activator.CreateInstance(wanted, parts);
    }
}
