using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using PatternStudio.Studio.Accounts;

namespace PatternStudio.Studio.Data.Configuration;

internal sealed class PreferencesConfiguration : IEntityTypeConfiguration<KeptPreferences>
{
    private const int NameLength = 20;

    public void Configure(EntityTypeBuilder<KeptPreferences> preferences)
    {
        preferences.ToTable("Preferences");
        preferences.HasKey(it => it.AccountId);
        preferences.Ignore(it => it.Value);
        preferences.Property(it => it.Lengths).HasConversion<string>().HasMaxLength(NameLength);
        preferences.Property(it => it.Decimals).HasConversion<string>().HasMaxLength(NameLength);
        preferences.Property(it => it.Dates).HasConversion<string>().HasMaxLength(NameLength);
        preferences.HasOne<Account>().WithOne().HasForeignKey<KeptPreferences>(it => it.AccountId).OnDelete(DeleteBehavior.Cascade);
    }
}
