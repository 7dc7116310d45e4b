using System.ComponentModel.DataAnnotations;
using System.Reflection;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Tests;

/// <summary>Habits that everybody who adds to the studio keeps.</summary>
public sealed class ConventionTests
{
    private static readonly Assembly Studio = typeof(StudioDbContext).Assembly;

    private static IEnumerable<Type> Entities
    {
        get
        {
            using SqliteStudioDbContext context = new SqliteDesignTime().CreateDbContext([]);
            return [.. context.Model.GetEntityTypes().Select(entity => entity.ClrType).Where(type => type.Assembly == Studio)];
        }
    }

    [Fact]
    public void There_are_entities_to_look_at() => Assert.Equal(26, Entities.Count());

    [Fact]
    public void Entities_change_only_through_their_own_methods() =>
        Assert.Empty(Entities
            .SelectMany(type => type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            .Where(property => property.SetMethod is { IsPublic: true })
            .Select(property => $"{property.DeclaringType!.Name}.{property.Name} has a public setter"));

    [Fact]
    public void Entities_know_nothing_of_the_store() =>
        Assert.Empty(Entities
            .SelectMany(type => type.GetMembers().Where(member => member.DeclaringType == type).Prepend<MemberInfo>(type))
            .Where(member => member.GetCustomAttributes().Any(IsMapping))
            .Select(member => $"{member.DeclaringType?.Name}.{member.Name} has a mapping attribute"));

    [Fact]
    public void Public_classes_are_sealed_static_or_abstract() =>
        Assert.Empty(Studio.GetExportedTypes()
            .Where(type => type is { IsClass: true, IsSealed: false, IsAbstract: false } && !IsMigration(type))
            .Select(type => $"{type.Name} can be inherited from"));

    [Fact]
    public void Everything_that_waits_can_be_stopped() =>
        Assert.Empty(Studio.GetExportedTypes()
            .Where(type => !IsMigration(type) && !typeof(StudioDbContext).IsAssignableFrom(type))
            .SelectMany(type => type.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
            .Where(method => typeof(Task).IsAssignableFrom(method.ReturnType)
                && method.GetParameters().LastOrDefault()?.ParameterType != typeof(CancellationToken))
            .Select(method => $"{method.DeclaringType!.Name}.{method.Name} takes no cancellation token"));

    private static bool IsMapping(Attribute attribute) =>
        attribute is ValidationAttribute or KeyAttribute or TimestampAttribute
        || attribute.GetType().Namespace is "System.ComponentModel.DataAnnotations.Schema" or "Microsoft.EntityFrameworkCore";

    private static bool IsMigration(Type type) => type.Namespace?.Contains(".Migrations", StringComparison.Ordinal) == true;
}
