using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using PatternStudio.Studio.Accounts;

namespace PatternStudio.Studio.Data.Configuration;

internal sealed class AccountConfiguration : IEntityTypeConfiguration<Account>
{
    public void Configure(EntityTypeBuilder<Account> account)
    {
        account.ToTable("Accounts");
        account.Property(it => it.Id).ValueGeneratedNever();
        account.Property(it => it.Name).HasMaxLength(Account.NameLength).HasDefaultValue("");
    }
}
